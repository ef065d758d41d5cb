package bayproof.handover;

import bayproof.units.Dimension;
import bayproof.units.Units;

/**
 * What was planned for a value that was then measured: a figure, a range, or a bound.
 *
 * @param text how it is printed; empty where nothing was planned
 * @param low  the least value that fits, SI; minus infinity for a bound from above
 * @param high the greatest value that fits, SI; not a number where nothing was planned
 */
record Planned(String text, double low, double high) {
    static final Planned NOTHING = new Planned("", Double.NaN, Double.NaN);

    static Planned figure(double si, Dimension dimension, String origin) {
        return new Planned(print(si, dimension) + origin, si, si);
    }

    static Planned range(double low, double high, Dimension dimension, String origin) {
        return new Planned(print(low, dimension) + " to " + print(high, dimension) + origin, low, high);
    }

    static Planned atMost(double si, Dimension dimension, String origin) {
        return new Planned("at most " + print(si, dimension) + origin, Double.NEGATIVE_INFINITY, si);
    }

    /** What a measured value lies from the plan: from a figure or a bound with its sign, from a range only outside of it. */
    String difference(double measured, Dimension dimension) {
        if (Double.isNaN(high)) {
            return "";
        }
        if (low < high && measured >= low && measured <= high && !Double.isInfinite(low)) {
            return "within";
        }
        double from = measured - (measured < low ? low : high);
        return (from > 0 ? "+" : "") + Units.printDifference(from, dimension);
    }

    /** How far a measured value lies outside, as a share of the nearest planned value; 0 where it lies inside or nothing was planned. */
    double share(double measured) {
        double nearest = Math.max(low, Math.min(high, measured));
        return Double.isNaN(high) || nearest == 0 ? 0 : Math.abs((measured - nearest) / nearest);
    }

    static String print(double si, Dimension dimension) {
        return Units.print(si, dimension);
    }
}
