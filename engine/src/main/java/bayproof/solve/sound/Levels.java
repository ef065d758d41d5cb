package bayproof.solve.sound;

/** Volts, power and decibels of a signal. All volts are RMS unless a name says otherwise. */
public final class Levels {
    private static final double ROUNDED = 1e9;

    private Levels() {
    }

    /** Target volts at an output: V = sqrt(P R) (textbook). R is the nominal load of the plan, never what an ohmmeter reads. */
    public static double targetVolts(double watts, double loadOhms) {
        return Math.sqrt(watts * loadOhms);
    }

    /**
     * Volts of an amplifier output at its rated power; a bridged pair has twice those of one channel.
     *
     * @param ratedWatts of one channel
     * @param ratedOhms  load it is rated at
     */
    public static double fullVolts(double ratedWatts, double ratedOhms, boolean bridged) {
        return targetVolts(ratedWatts, ratedOhms) * (bridged ? 2 : 1);
    }

    /** Power of so many volts in a load: P = V^2/R (textbook). */
    public static double watts(double volts, double loadOhms) {
        return volts * volts / loadOhms;
    }

    /** Peak volts of a sine (textbook). */
    public static double peakVolts(double volts) {
        return volts * Math.sqrt(2);
    }

    /** Level of one voltage against another: 20 log10 (textbook). */
    public static double decibels(double volts, double referenceVolts) {
        return 20 * Math.log10(volts / referenceVolts);
    }

    /** Volts at a level against a reference: V x 10^(dB/20); with a tone below full scale the volts of 0 dBFS times this. */
    public static double voltsAt(double referenceVolts, double decibels) {
        return referenceVolts * Math.pow(10, decibels / 20);
    }

    /** Room above a share of full power: -10 log10 (textbook). */
    public static double headroomDecibels(double shareOfPower) {
        return -10 * Math.log10(shareOfPower);
    }

    /**
     * Power that reaches a speaker as a share of its rating. A root and its square leave a rounding in the last digits, which must not
     * break a rating that is met exactly.
     */
    public static double powerShare(double watts, double ratedWatts) {
        return Math.rint(watts / ratedWatts * ROUNDED) / ROUNDED;
    }
}
