package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.CoilNet;
import bayproof.solve.sound.SpeakerNet;
import bayproof.support.Tally;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Random nets of voice coils against ngspice: the load at one frequency and what each coil takes of the power. */
class CoilNetNgspiceTest {
    private static final double RELATIVE = 1e-9;

    private static SpeakerNet net(CoilNetDeck deck, CoilNet part) {
        if (part instanceof CoilNet.Coil coil) {
            CoilNetDeck.Values values = deck.coils().get(coil.terminal());
            return new SpeakerNet.Coil(coil.terminal(), values.ohms(), values.farads() == 0 ? Double.POSITIVE_INFINITY : values.farads());
        }
        if (part instanceof CoilNet.Series series) {
            return new SpeakerNet.Series(series.members().stream().map(member -> net(deck, member)).toList());
        }
        return new SpeakerNet.Parallel(((CoilNet.Parallel) part).members().stream().map(member -> net(deck, member)).toList());
    }

    @Test
    void loadsAndSharesAgree() throws IOException {
        Map<String, Map<String, Double>> printed = StoredDecks.coilNetsPrinted();
        int coils = 0;
        int withCapacitor = 0;
        List<CoilNetDeck> decks = StoredDecks.coilNets();
        for (CoilNetDeck deck : decks) {
            Map<String, Double> values = printed.get(deck.name());
            SpeakerNet net = net(deck, CoilNet.parse(deck.net()));
            double ohms = 1 / values.get("mag(i(v1))");
            assertEquals(ohms, net.ohmsAt(deck.hertz()), ohms * RELATIVE, deck.name() + " " + deck.net());
            List<String> asked = deck.deck().quantities();
            List<String> order = CoilNet.parse(deck.net()).coils();
            Map<String, Double> watts = new LinkedHashMap<>();
            for (int i = 0; i < order.size(); i++) {
                watts.put(order.get(i), Math.pow(values.get(asked.get(i + 1)), 2) / deck.coils().get(order.get(i)).ohms());
            }
            double sum = watts.values().stream().mapToDouble(Double::doubleValue).sum();
            Map<String, Double> shares = net.sharesAt(deck.hertz());
            assertEquals(List.copyOf(watts.keySet()), List.copyOf(shares.keySet()), deck.name());
            watts.forEach((coil, one) -> assertEquals(one / sum, shares.get(coil), RELATIVE, deck.name() + " " + coil));
            if (deck.coils().values().stream().allMatch(one -> one.farads() == 0)) {
                assertEquals(ohms, net.directOhms(), ohms * RELATIVE, deck.name());
            } else {
                withCapacitor++;
            }
            coils += order.size();
            Tally.count("outside checks", 1);
        }
        assertEquals(100, decks.size());
        assertTrue(withCapacitor >= 25 && coils >= 300, withCapacitor + " with a capacitor, " + coils + " coils");
        Tally.say("coil nets against ngspice: " + decks.size() + ", " + withCapacitor + " with a capacitor, " + coils + " coils");
    }

    @Test
    void ngspiceReproducesTheStoredValues() throws IOException, InterruptedException {
        StoredDecks.assertReproduced("the stored coil nets", StoredDecks.coilNets().stream().map(CoilNetDeck::deck).toList(),
                StoredDecks.coilNetsPrinted());
    }
}
