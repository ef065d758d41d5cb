package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.support.Tally;
import java.io.IOException;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The solver against ngspice on stored random networks. ngspice has solved every network with every combination of
 * source conditions; the point that counts is the one with the highest volts of those whose printed values satisfy the
 * inequalities of their conditions.
 */
class NgspiceTest {
    private static final double RELATIVE = 1e-6;
    /**
     * Currents below this are compared by their difference only: ngspice computes a branch current from two node volts
     * of up to 15 V, and two units in their last place (4e-15 V) over the smallest branch of 0.3 milliohm make 1e-11 A,
     * which is 1e-6 of 1e-5 A.
     */
    private static final double SMALLEST_AMPERES = 1e-5;
    /** A printed point must satisfy its inequalities within what the printing rounds. */
    private static final double SLACK = 1e-9;
    /**
     * Volts no such network has: nothing in the deck holds the volts, and what the sources give too much flows through
     * the 1e-12 S that ngspice adds. It is no operating point of the network.
     */
    private static final double SINGULAR_VOLTS = 1000;

    private static List<NetworkText.Named> networks;
    private static Map<String, Map<String, Double>> printed;

    /** A printed point that satisfies the inequalities of its conditions. */
    private record Point(Condition battery, Condition alternator, Network network, Map<String, Double> values) {
        double volts(String positive, String negative) {
            return volts(positive) - volts(negative);
        }

        double volts(String node) {
            return node.equals(network.reference()) ? 0 : values.get("v(" + node + ")");
        }

        double loadVolts() {
            return network.loads().stream().mapToDouble(load -> volts(load.positive(), load.negative())).sum();
        }

        boolean isConsistent() {
            Source.Battery b = SpiceDeck.battery(network);
            Source.Regulated a = SpiceDeck.alternator(network);
            double batteryVolts = volts(b.positive(), b.negative());
            double alternatorVolts = volts(a.positive(), a.negative());
            boolean batteryHolds = switch (battery) {
                case TAKING_ACCEPTANCE -> batteryVolts >= b.restVolts() - SLACK;
                // ngspice counts the current into the positive terminal of a voltage source: what the battery takes.
                case AT_REST_VOLTS -> values.get("i(vbattery)") >= -SLACK
                        && values.get("i(vbattery)") <= b.acceptanceAmperes() + SLACK;
                default -> batteryVolts <= b.restVolts() + SLACK;
            };
            return batteryHolds && switch (alternator) {
                case STANDING_BY -> alternatorVolts >= a.setVolts() - SLACK;
                case HOLDING_SET_POINT -> -values.get("i(valternator)") >= -SLACK
                        && -values.get("i(valternator)") <= a.limitAmperes() + SLACK;
                default -> alternatorVolts <= a.setVolts() + SLACK;
            };
        }
    }

    @BeforeAll
    static void read() throws IOException {
        networks = StoredDecks.networks();
        printed = Ngspice.values(StoredDecks.printed());
    }

    private static Stream<Point> consistent(NetworkText.Named named) {
        return SpiceDeck.of(named).stream().map(SpiceDeck::title).filter(title -> !isMeaningless(printed.get(title)))
                .map(title -> {
                    String[] words = title.split(" ");
                    return new Point(Condition.valueOf(words[1]), Condition.valueOf(words[2]), named.network(),
                            printed.get(title));
                })
                .filter(Point::isConsistent);
    }

    private static Point highest(NetworkText.Named named) {
        return consistent(named).max((p, q) -> Double.compare(p.loadVolts(), q.loadVolts())).orElseThrow();
    }

    @Test
    void everyNetworkAgrees() {
        for (NetworkText.Named named : networks) {
            Network network = named.network();
            Point expected = highest(named);
            OperatingPoint point = assertInstanceOf(OperatingPoint.class, Solver.solve(network), named.name());
            for (Source source : network.sources()) {
                close(expected.volts(source.positive(), source.negative()),
                        point.voltsAcross(source.positive(), source.negative()), 0, named.name() + " " + source.id());
            }
            for (Load load : network.loads()) {
                close(expected.volts(load.positive(), load.negative()), point.loadVolts(load.id()), 0,
                        named.name() + " " + load.id());
            }
            for (Branch branch : network.branches()) {
                close(expected.values().get("@r" + branch.id() + "[i]"), point.branchAmperes(branch.id()),
                        SMALLEST_AMPERES, named.name() + " " + branch.id());
            }
            assertEquals(expected.battery() + " " + expected.alternator(),
                    point.condition("battery") + " " + point.condition("alternator"), named.name());
            Tally.count("outside checks", 1);
        }
    }

    private static void close(double expected, double actual, double smallest, String what) {
        double allowed = RELATIVE * Math.max(Math.abs(expected), smallest);
        assertTrue(Math.abs(actual - expected) <= allowed,
                () -> what + ": ngspice " + expected + ", solver " + actual);
    }

    @Test
    void theNetworksAreTheMixThatIsAskedFor() {
        int meshed = 0;
        int atLimit = 0;
        int nearMostPower = 0;
        int severalPoints = 0;
        Map<Condition, Integer> conditions = new EnumMap<>(Condition.class);
        for (NetworkText.Named named : networks) {
            Point point = highest(named);
            meshed += loops(named.network()) >= 3 ? 1 : 0;
            atLimit += point.alternator() == Condition.AT_LIMIT ? 1 : 0;
            severalPoints += consistent(named).count() > 1 ? 1 : 0;
            conditions.merge(point.battery(), 1, Integer::sum);
            conditions.merge(point.alternator(), 1, Integer::sum);
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

        assertEquals(decks, StoredDecks.decks());
    }

    @Test
    void ngspiceReproducesTheStoredValues() throws IOException, InterruptedException {
        Optional<String> version = Ngspice.version();
        if (version.isEmpty()) {
            Tally.notRun("ngspice re-run of the stored decks", "ngspice is not installed");
            Assumptions.abort("ngspice is not installed");
        }
        List<SpiceDeck> decks = StoredDecks.decks();
        Map<String, Map<String, Double>> again = Ngspice.values(Ngspice.run(decks));
        Set<String> compared = new HashSet<>();
        for (SpiceDeck deck : decks) {
            Map<String, Double> before = printed.get(deck.title());
            Map<String, Double> now = again.get(deck.title());
            if (isMeaningless(before)) {
                assertTrue(isMeaningless(now), deck.title());
                continue;
            }
            assertEquals(before.keySet(), now.keySet(), deck.title());
            before.forEach((quantity, value) -> assertEquals(value, now.get(quantity),
                    1e-9 * Math.max(Math.abs(value), quantity.startsWith("v(") ? 1 : 1e-2),
                    deck.title() + " " + quantity + " by " + version.get()));
            compared.add(deck.title().split(" ")[0]);
        }
        assertEquals(networks.size(), compared.size());
    }

    private static boolean isMeaningless(Map<String, Double> values) {
        return values.isEmpty() || values.entrySet().stream()
                .anyMatch(entry -> entry.getKey().startsWith("v(") && Math.abs(entry.getValue()) > SINGULAR_VOLTS);
    }
}
