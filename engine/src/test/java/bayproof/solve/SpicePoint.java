package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A point that ngspice printed for one network with its sources held in given conditions.
 *
 * @param conditions of the sources, by their ids
 * @param values     what was printed, by quantity
 */
record SpicePoint(NetworkText.Named named, Map<String, Condition> conditions, Map<String, Double> values) {
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

    /** The printed points of a network that satisfy the inequalities of their conditions. */
    static Stream<SpicePoint> consistent(NetworkText.Named named, Map<String, Map<String, Double>> printed) {
        return SpiceDeck.combinations(named.network()).stream()
                .map(conditions -> new SpicePoint(named, conditions, printed.get(SpiceDeck.title(named, conditions))))
                .filter(point -> !isMeaningless(point.values)).filter(SpicePoint::isConsistent);
    }

    /** The consistent point with the highest volts. */
    static SpicePoint highest(NetworkText.Named named, Map<String, Map<String, Double>> printed) {
        return consistent(named, printed).max((p, q) -> Double.compare(p.loadVolts(), q.loadVolts())).orElseThrow();
    }

    /** Whether ngspice found no point, or one that is none of the network. */
    static boolean isMeaningless(Map<String, Double> values) {
        return values.isEmpty() || values.entrySet().stream()
                .anyMatch(entry -> entry.getKey().startsWith("v(") && Math.abs(entry.getValue()) > SINGULAR_VOLTS);
    }

    Condition condition(String source) {
        return conditions.get(source);
    }

    private double volts(String positive, String negative) {
        return volts(positive) - volts(negative);
    }

    private double volts(String node) {
        return node.equals(named.network().reference()) ? 0 : values.get("v(" + node + ")");
    }

    private double loadVolts() {
        return named.network().loads().stream().mapToDouble(load -> volts(load.positive(), load.negative())).sum();
    }

    private boolean isConsistent() {
        return named.network().sources().stream().allMatch(this::isConsistent);
    }

    private boolean isConsistent(Source source) {
        double volts = volts(source.positive(), source.negative());
        // ngspice counts the current into the positive terminal of a voltage source: what the source takes.
        double taken = values.getOrDefault("i(v" + source.id() + ")", 0.0);
        return switch (conditions.get(source.id())) {
            case TAKING_ACCEPTANCE -> volts >= ((Source.Battery) source).restVolts() - SLACK;
            case AT_REST_VOLTS -> taken >= -SLACK && taken <= ((Source.Battery) source).acceptanceAmperes() + SLACK;
            case GIVING -> volts <= ((Source.Battery) source).restVolts() + SLACK;
            case STANDING_BY -> volts >= ((Source.Regulated) source).setVolts() - SLACK;
            case HOLDING_SET_POINT -> -taken >= -SLACK && -taken <= ((Source.Regulated) source).limitAmperes() + SLACK;
            case AT_LIMIT -> volts <= ((Source.Regulated) source).setVolts() + SLACK;
        };
    }

    /** Compares every voltage of sources and loads, every branch current and every condition with our own solution. */
    void assertAgrees() {
        String name = named.name();
        OperatingPoint point = assertInstanceOf(OperatingPoint.class, named.solve(), name);
        Map<String, Condition> ours = new LinkedHashMap<>();
        for (Source source : SpiceDeck.ordered(named.network())) {
            close(volts(source.positive(), source.negative()), point.voltsAcross(source.positive(), source.negative()),
                    0, name + " " + source.id());
            ours.put(source.id(), point.condition(source.id()));
        }
        for (Load load : named.network().loads()) {
            close(volts(load.positive(), load.negative()), point.loadVolts(load.id()), 0, name + " " + load.id());
        }
        for (Branch branch : named.network().branches()) {
            close(values.get("@r" + branch.id() + "[i]"), point.branchAmperes(branch.id()), SMALLEST_AMPERES,
                    name + " " + branch.id());
        }
        assertEquals(conditions, ours, name);
    }

    private static void close(double expected, double actual, double smallest, String what) {
        double allowed = RELATIVE * Math.max(Math.abs(expected), smallest);
        assertTrue(Math.abs(actual - expected) <= allowed,
                () -> what + ": ngspice " + expected + ", solver " + actual);
    }
}
