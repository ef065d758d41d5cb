package bayproof.solve.sound;

/** Volts, power and decibels of a signal. All volts are RMS unless a name says otherwise. */
public final class Levels {
    /** 0 dBu: the volts that give 1 mW in 600 ohm. */
    private static final double UNLOADED_REFERENCE_VOLTS = Math.sqrt(0.6);

    private Levels() {
    }

    /** Target volts at an output: V = sqrt(P R) (textbook). R is the nominal load of the plan, never what an ohmmeter reads. */
    public static double targetVolts(double watts, double loadOhms) {
        return Math.sqrt(watts * loadOhms);
    }

    /** Power of so many volts in a load: P = V^2/R (textbook). */
    public static double watts(double volts, double loadOhms) {
        return volts * volts / loadOhms;
    }

    /** Peak volts of a sine (textbook). */
    public static double peakVolts(double volts) {
        return volts * Math.sqrt(2);
    }

    /** RMS volts of a sine of so many volts from peak to peak (textbook). */
    public static double voltsOfSwing(double peakToPeakVolts) {
        return peakToPeakVolts / 2 / Math.sqrt(2);
    }

    /** Level of one voltage against another: 20 log10 (textbook). */
    public static double decibels(double volts, double referenceVolts) {
        return 20 * Math.log10(volts / referenceVolts);
    }

    /** Volts at a level against a reference: V x 10^(dB/20); with a tone below full scale the volts of 0 dBFS times this. */
    public static double voltsAt(double referenceVolts, double decibels) {
        return referenceVolts * Math.pow(10, decibels / 20);
    }

    /** Volts of a level in dBV: against 1 V. */
    public static double voltsOfDecibelVolts(double level) {
        return voltsAt(1, level);
    }

    /** Volts of a level in dBu: against 0.7746 V, 1 mW in 600 ohm. */
    public static double voltsOfDecibelsUnloaded(double level) {
        return voltsAt(UNLOADED_REFERENCE_VOLTS, level);
    }

    /** Room above a share of full power: -10 log10 (textbook). */
    public static double headroomDecibels(double shareOfPower) {
        return -10 * Math.log10(shareOfPower);
    }

    /**
     * Average power as a share of the full-sine rating where peaks just clip: 10^(-(CF - 3.01)/10), 3.01 dB being the crest factor of
     * a sine (derived).
     *
     * @param crestDecibels crest factor, dB, at least that of a sine
     */
    public static double shareOfCrest(double crestDecibels) {
        return 2 * Math.pow(10, -crestDecibels / 10);
    }

    /** Power of a bridged output without a converter: (Vs/sqrt 2)^2/R (derived; a hobby forum gives 14 V, 4 ohm: 24.5 W). */
    public static double bridgeWatts(double supplyVolts, double loadOhms) {
        return watts(supplyVolts / Math.sqrt(2), loadOhms);
    }
}
