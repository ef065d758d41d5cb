package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.support.Tally;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The solver against ngspice on stored random networks. ngspice has solved every network with every combination of
 * source conditions; the point that counts is the one with the highest volts of those whose printed values satisfy the
 * inequalities of their conditions.
 */
class NgspiceTest {
    private static List<NetworkText.Named> networks;
    private static Map<String, Map<String, Double>> printed;

    @BeforeAll
    static void read() throws IOException {
        networks = StoredDecks.PLAIN.networks();
        printed = StoredDecks.PLAIN.printed();
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
        int meshed = 0;
        int atLimit = 0;
        int nearMostPower = 0;
        int severalPoints = 0;
        Map<Condition, Integer> conditions = new EnumMap<>(Condition.class);
        for (NetworkText.Named named : networks) {
            SpicePoint point = SpicePoint.highest(named, printed);
            meshed += loops(named.network()) >= 3 ? 1 : 0;
            atLimit += point.condition("alternator") == Condition.AT_LIMIT ? 1 : 0;
            severalPoints += SpicePoint.consistent(named, printed).count() > 1 ? 1 : 0;
            point.conditions().values().forEach(condition -> conditions.merge(condition, 1, Integer::sum));
            // Within 20 % of the most power: at 1 / 0.8 of its powers it has no solution.
            nearMostPower += Solver.solve(RandomNetworks.scaled(named.network(), 1.25)) instanceof NoSolution ? 1 : 0;
            assertTrue(named.network().nodes().containsAll(List.of("ground1", "ground2", "ground3")));
        }
        String mix = meshed + " meshed, " + atLimit + " at the limit, " + nearMostPower + " near the most power, "
                + severalPoints + " with several points, " + conditions;
        assertEquals(200, networks.size());
        assertTrue(meshed >= 100, mix);
        assertTrue(atLimit >= 50, mix);
        assertTrue(nearMostPower >= 50, mix);
        assertTrue(severalPoints >= 10, mix);
        for (Condition condition : Condition.values()) {
            assertTrue(conditions.getOrDefault(condition, 0) >= 10, mix);
        }
        Tally.say("ngspice networks: " + mix);
    }

    /** Independent loops of the branches alone: branches - nodes + connected parts. */
    private static int loops(Network network) {
        Groups parts = new Groups(network.nodes().size());
        int loops = 0;
        for (Branch branch : network.branches()) {
            loops += parts.join(network.nodes().indexOf(branch.from()), network.nodes().indexOf(branch.to())) ? 0 : 1;
        }
        return loops;
    }

    @Test
    void theStoredDecksComeFromTheStoredNetworks() throws IOException {
        List<SpiceDeck> decks = networks.stream().flatMap(named -> SpiceDeck.of(named).stream()).toList();

        assertEquals(decks, StoredDecks.PLAIN.decks());
    }

    @Test
    void ngspiceReproducesTheStoredValues() throws IOException, InterruptedException {
        StoredDecks.PLAIN.assertReproduced("the stored decks");
    }
}
