package bayproof.solve.acoustic;

import java.util.function.DoubleUnaryOperator;

/**
 * How the power of a programme is spread over the bands: IEC 60268-1:1985 table II, levels of simulated programme in third octaves.
 * Modern music with much bass has more below 100 Hz (common practice, no source).
 */
public final class ProgrammePower {
    private static final double[] LEVELS = {-13.5, -10.2, -7.4, -5.2, -3.5, -2.3, -1.4, -0.9, -0.5, -0.2, -0.1, 0, 0, 0, 0, 0, 0, -0.1,
        -0.3, -0.6, -1.0, -1.6, -2.5, -3.7, -5.1, -7.0, -9.4, -11.9, -14.8, -18.2, -21.6};

    private ProgrammePower() {
    }

    /**
     * Share of the power between two frequencies. Within a band the power is spread evenly over the logarithm of the frequency.
     *
     * @param lowHertz  0 for no lower end
     * @param highHertz infinite for no upper end
     */
    public static double share(double lowHertz, double highHertz) {
        return between(lowHertz, highHertz) / between(0, Double.POSITIVE_INFINITY);
    }

    /**
     * The programme's power as something that changes with the frequency lets it through, one figure for each third octave at its exact
     * center.
     *
     * @param factor what becomes of one watt at a frequency
     * @return what becomes of one watt of the whole programme
     */
    public static double through(DoubleUnaryOperator factor) {
        double sum = 0;
        double all = 0;
        for (int i = 0; i < LEVELS.length; i++) {
            double power = Math.pow(10, LEVELS[i] / 10);
            sum += power * factor.applyAsDouble(ThirdOctaves.exactHertz(i));
            all += power;
        }
        return sum / all;
    }

    private static double between(double lowHertz, double highHertz) {
        double sum = 0;
        for (int i = 0; i < LEVELS.length; i++) {
            double from = Math.log10(Math.max(lowHertz, Double.MIN_NORMAL) / ThirdOctaves.lowerEdgeHertz(i)) * 10;
            double to = Math.log10(highHertz / ThirdOctaves.lowerEdgeHertz(i)) * 10;
            sum += Math.pow(10, LEVELS[i] / 10) * Math.max(0, Math.min(1, to) - Math.max(0, from));
        }
        return sum;
    }
}
