package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.support.Tally;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Networks of tied sources and a DC-to-DC converter against ngspice, as in {@link NgspiceTest}. There the input of the
 * converter is a source of its own that draws the output's power over the efficiency: one set of equations, where ours
 * is found in rounds.
 */
class NgspiceConverterTest {
    private static List<NetworkText.Named> networks;
    private static Map<String, Map<String, Double>> printed;

    @BeforeAll
    static void read() throws IOException {
        networks = StoredDecks.CONVERTER.networks();
        printed = StoredDecks.CONVERTER.printed();
    }

    @Test
    void everyNetworkAgrees() {
        for (NetworkText.Named named : networks) {
            SpicePoint.highest(named, printed).assertAgrees();
            Tally.count("outside checks", 1);
        }
    }

    @Test
    void theNetworksAreTheMixThatIsAskedFor() {
        Map<String, Integer> mix = new TreeMap<>();
        for (NetworkText.Named named : networks) {
            assertEquals(1, named.converters().size());
            SpicePoint point = SpicePoint.highest(named, printed);
            point.conditions().forEach((source, condition) -> mix.merge(source + " " + condition, 1, Integer::sum));
            for (Source source : named.network().sources()) {
                mix.merge(source.id(), 1, Integer::sum);
            }
            if (SpicePoint.consistent(named, printed).count() > 1) {
                mix.merge("several points", 1, Integer::sum);
            }
        }
        assertEquals(100, networks.size());
        // Output of the converter: idle, at its set point, at its limit.
        for (String least : List.of("converter STANDING_BY", "converter HOLDING_SET_POINT", "converter AT_LIMIT",
                // Its input side: charged, charged by an alternator at its limit, off.
                "alternator HOLDING_SET_POINT", "alternator AT_LIMIT", "alternator STANDING_BY",
                // Tied sources: one takes charge, one is held, one gives.
                "battery TAKING_ACCEPTANCE", "battery AT_REST_VOLTS", "battery GIVING",
                "second TAKING_ACCEPTANCE", "second AT_REST_VOLTS", "second GIVING")) {
            assertTrue(mix.getOrDefault(least, 0) >= 6, least + " in " + mix);
        }
        Tally.say("ngspice networks with tied sources and a converter: " + mix);
    }

    @Test
    void theStoredDecksComeFromTheStoredNetworks() throws IOException {
        List<SpiceDeck> decks = networks.stream().flatMap(named -> SpiceDeck.of(named).stream()).toList();

        assertEquals(decks, StoredDecks.CONVERTER.decks());
    }

    @Test
    void ngspiceReproducesTheStoredValues() throws IOException, InterruptedException {
        StoredDecks.CONVERTER.assertReproduced("the stored decks with a converter");
    }
}
