package bayproof.solve.acoustic;

import bayproof.solve.acoustic.Filter.Pass;
import java.util.Comparator;
import java.util.List;

/**
 * What reaches one speaker of a system: every filter on the way, those of a factory output that was already split included.
 *
 * @param filters      filters in cascade
 * @param inverted     whether the speaker moves the other way, all inversions counted
 * @param delaySeconds how late its sound arrives at the listener: what is set and the way through the air
 */
public record Band(List<Filter> filters, boolean inverted, double delaySeconds) {
    private static final double LOWEST_HERTZ = 1;
    private static final double HIGHEST_HERTZ = 100_000;
    private static final int HALVINGS = 60;

    public Band {
        filters = List.copyOf(filters);
    }

    /** Amplitude at the listener against a speaker without filters. */
    public Phasor at(double hertz) {
        Phasor all = new Phasor(inverted ? -1 : 1, 0);
        for (Filter filter : filters) {
            all = all.times(filter.at(hertz));
        }
        return all.times(Phasor.delay(hertz, delaySeconds));
    }

    /** The same with the speaker's leads swapped. */
    public Band reversed() {
        return new Band(filters, !inverted, delaySeconds);
    }

    /** Sum of the orders of the filters on one side. */
    public int order(Pass pass) {
        return filters.stream().filter(filter -> filter.pass() == pass).mapToInt(Filter::order).sum();
    }

    /**
     * Where the filters of one side together have fallen as far as the steepest of them has at its own corner. Two equal filters in
     * cascade have fallen twice as far at their corner, so together they have another one.
     *
     * @return hertz; 0 for a missing high-pass and infinite for a missing low-pass
     */
    public double cornerHertz(Pass pass) {
        List<Filter> side = filters.stream().filter(filter -> filter.pass() == pass).toList();
        if (side.isEmpty()) {
            return pass == Pass.HIGH ? 0 : Double.POSITIVE_INFINITY;
        }
        if (side.size() == 1) {
            return side.get(0).cornerHertz();
        }
        double fall = side.stream().max(Comparator.comparingInt(Filter::order)).orElseThrow().fallAtCornerDecibels();
        Band only = new Band(side, false, 0);
        double low = LOWEST_HERTZ;
        double high = HIGHEST_HERTZ;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(low * high);
            boolean fallen = -only.at(middle).decibels() >= fall;
            if (fallen == (pass == Pass.HIGH)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(low * high);
    }
}
