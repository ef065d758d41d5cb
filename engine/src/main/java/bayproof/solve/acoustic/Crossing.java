package bayproof.solve.acoustic;

import bayproof.solve.acoustic.Filter.Pass;
import java.util.stream.Stream;

/**
 * Two neighboring bands of one side of a system, heard at one place. Ideal filters and speakers that are flat about the crossing;
 * what real speakers add of their own only a measurement shows.
 *
 * @param lower the band below
 * @param upper the band above
 */
public record Crossing(Band lower, Band upper) {
    /** A deeper notch than this is no longer heard as deeper, and of two figures without end one could not be printed. */
    private static final double DEEPEST_DECIBELS = -60;

    /** How far the corners lie apart, octaves: above 0 a gap, below 0 an overlap. */
    public double octaves() {
        return Math.log(upper.cornerHertz(Pass.HIGH) / lower.cornerHertz(Pass.LOW)) / Math.log(2);
    }

    /** The middle between the corners. */
    public double hertz() {
        return Math.sqrt(upper.cornerHertz(Pass.HIGH) * lower.cornerHertz(Pass.LOW));
    }

    /** Level of both together at the middle, against one speaker far inside its band; not below -60 dB. */
    public double sumDecibels() {
        return sumDecibelsAt(hertz());
    }

    /** Level of both together at a frequency; not below -60 dB. */
    public double sumDecibelsAt(double hertz) {
        return sum(Stream.of(lower, upper), hertz);
    }

    /** Level of several bands together at a frequency; not below -60 dB. */
    public static double sum(Stream<Band> bands, double hertz) {
        Phasor sum = bands.map(band -> band.at(hertz)).reduce(new Phasor(0, 0), Phasor::plus);
        return Math.max(DEEPEST_DECIBELS, sum.decibels());
    }
}
