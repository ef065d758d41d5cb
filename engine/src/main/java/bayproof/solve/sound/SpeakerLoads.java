package bayproof.solve.sound;

/** What a net of speakers is to an amplifier. */
public final class SpeakerLoads {
    /** The range that a rated impedance is stated over where nothing else is said (IEC 61260-1 third octaves, 20 Hz to 20 kHz). */
    public static final double LOWEST_HERTZ = 20;
    public static final double HIGHEST_HERTZ = 20_000;
    private static final int STEPS = 300;

    private SpeakerLoads() {
    }

    /**
     * Load into which each half of a bridged pair works: half the load (encyclopedia text on bridge-tied loads). The load itself
     * stays what it is; each half carries the current that it would carry with half of it.
     */
    public static double bridgedHalfOhms(double loadOhms) {
        return loadOhms / 2;
    }

    /**
     * Least load between {@link #LOWEST_HERTZ} and {@link #HIGHEST_HERTZ}, every coil taken as a resistance. A net without capacitors
     * has one load; where a tweeter is fed through a capacitor beside a full-range speaker the load falls toward the top, because
     * nothing keeps the top from the full-range speaker (derived from ideal parts).
     *
     * @return ohms
     */
    public static double leastOhms(SpeakerNet net) {
        if (!net.hasCapacitor()) {
            return net.directOhms();
        }
        double least = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= STEPS; step++) {
            double hertz = LOWEST_HERTZ * Math.pow(HIGHEST_HERTZ / LOWEST_HERTZ, (double) step / STEPS);
            least = Math.min(least, net.ohmsAt(hertz));
        }
        return least;
    }

    /**
     * Corner of a capacitor in series with a resistance, where the speaker has lost 3 dB: f = 1/(2 pi R C) (textbook). Half the
     * resistance doubles it.
     */
    public static double cornerHertz(double ohms, double farads) {
        return 1 / (2 * Math.PI * ohms * farads);
    }

    /** Capacitor for a corner: C = 1/(2 pi R f) (textbook; lecture notes 34870 of a technical university, lesson 9). */
    public static double cornerFarads(double ohms, double hertz) {
        return 1 / (2 * Math.PI * ohms * hertz);
    }

    /** Coil before a speaker for a corner of first order: L = R/(2 pi f) (textbook; lecture notes 34870, lesson 9). */
    public static double cornerHenries(double ohms, double hertz) {
        return ohms / (2 * Math.PI * hertz);
    }

    /**
     * Two resistors before a speaker that make it quieter and leave the load as it is: k = 10^(level/20), R1 = (1 - k) R in series, R2 =
     * k R/(1 - k) across the speaker (textbook; lecture notes 34870, lesson 9).
     *
     * @param seriesOhms resistor in series
     * @param acrossOhms resistor across the speaker
     */
    public record Pad(double seriesOhms, double acrossOhms) {
        /**
         * The pad for a fall.
         *
         * @param decibels the fall, above 0
         */
        public static Pad of(double ohms, double decibels) {
            double left = Math.pow(10, -decibels / 20);
            return new Pad((1 - left) * ohms, left * ohms / (1 - left));
        }
    }
}
