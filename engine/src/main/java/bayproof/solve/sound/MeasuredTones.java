package bayproof.solve.sound;

import java.util.List;

/**
 * A factory output as it was measured: clean volts at one volume step for a low, a middle and a high tone. Figures hold at that volume
 * step and nowhere else. A tone that is not there has 0 V, and stands infinitely far from the others; one that is not asked for is not
 * a number.
 *
 * @param lowVolts  at 40 Hz
 * @param midVolts  at 1 kHz
 * @param highVolts at 10 kHz
 */
public record MeasuredTones(double lowVolts, double midVolts, double highVolts) {

    /** The low and the middle tone alone. */
    public static MeasuredTones bass(double lowVolts, double midVolts) {
        return new MeasuredTones(lowVolts, midVolts, Double.NaN);
    }

    /** The middle and the high tone alone. */
    public static MeasuredTones treble(double midVolts, double highVolts) {
        return new MeasuredTones(Double.NaN, midVolts, highVolts);
    }

    /** How far the low and the high tone lie from the middle one, as the larger of two ratios, each of the larger volts to the smaller. */
    public double unevenness() {
        double low = Double.isNaN(lowVolts) ? 1 : apart(lowVolts, midVolts);
        double high = Double.isNaN(highVolts) ? 1 : apart(highVolts, midVolts);
        return Math.max(low, high);
    }

    /**
     * How many times less bass a louder step gives than the volume knob promises: the rise of the middle tone over the rise of the low
     * one. An output that limits itself gives more than 1.
     */
    public double bassLost(MeasuredTones louder) {
        return ratio(louder.midVolts, louder.lowVolts) * ratio(lowVolts, midVolts);
    }

    /** Level of a louder step above this one at the middle tone, dB. Settings made at one of them are off by as much at the other. */
    public double offsetDecibels(MeasuredTones louder) {
        return Levels.decibels(louder.midVolts, midVolts);
    }

    /** The largest difference of the delays of outputs that are summed. */
    public static double delaySpread(List<Double> seconds) {
        return seconds.stream().mapToDouble(Double::doubleValue).max().orElse(0) - seconds.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    }

    private static double apart(double one, double other) {
        return Math.max(ratio(one, other), ratio(other, one));
    }

    private static double ratio(double one, double other) {
        return other == 0 ? Double.MAX_VALUE : one / other;
    }
}
