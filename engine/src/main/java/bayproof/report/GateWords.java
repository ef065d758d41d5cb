package bayproof.report;

import bayproof.demand.Gate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What the gates are called in a sentence. */
final class GateWords {
    private GateWords() {
    }

    /** The act in capitals: ORDER. */
    static String loud(Gate gate) {
        return gate.act().toUpperCase(Locale.ROOT);
    }

    /** The act as a noun, in capitals: ORDERING. */
    static String loudNoun(Gate gate) {
        return switch (gate) {
            case BEFORE_ORDER -> "ORDERING";
            case BEFORE_TEARDOWN -> "OPENING THE VEHICLE";
            case BEFORE_POWER -> "PUTTING THE FUSE IN";
            case HANDOVER -> "HANDOVER";
        };
    }

    /** Acts from a gate on, in the order of the work; all of them for the first gate. */
    static List<String> actsFrom(int first) {
        return Arrays.stream(Gate.values()).skip(first).map(Gate::act).toList();
    }

    /** Acts of the gates before one, in the order of the work. */
    static List<String> actsBefore(int end) {
        return Arrays.stream(Gate.values()).limit(end).map(Gate::act).toList();
    }
}
