package bayproof.solve.acoustic;

/**
 * One ideal crossover filter.
 *
 * @param shape       its family
 * @param order       order, 1 to 8; 6 dB an octave each
 * @param pass        what it lets through
 * @param cornerHertz the corner as it is set: a Butterworth filter has fallen 3.01 dB there, a Linkwitz-Riley filter 6.02 dB
 */
public record Filter(Shape shape, int order, Pass pass, double cornerHertz) {
    public static final int MOST_ORDER = 8;

    /** Families of filters. */
    public enum Shape { BUTTERWORTH, LINKWITZ_RILEY }

    /** What a filter lets through. */
    public enum Pass { HIGH, LOW }

    /** @throws IllegalArgumentException if no such filter exists: a Linkwitz-Riley filter is two equal Butterworth filters and of even order */
    public Filter {
        if (!exists(shape, order) || !(cornerHertz > 0) || Double.isInfinite(cornerHertz)) {
            throw new IllegalArgumentException("a " + shape + " filter of order " + order + " at " + cornerHertz + " Hz cannot be");
        }
    }

    /** Whether a family has such an order. */
    public static boolean exists(Shape shape, int order) {
        return order >= 1 && order <= MOST_ORDER && (shape == Shape.BUTTERWORTH || order % 2 == 0);
    }

    /** Transfer at a frequency; 1 far inside what it lets through. */
    public Phasor at(double hertz) {
        double x = pass == Pass.LOW ? hertz / cornerHertz : -cornerHertz / hertz;
        if (shape == Shape.BUTTERWORTH) {
            return butterworth(order, x);
        }
        Phasor half = butterworth(order / 2, x);
        return half.times(half);
    }

    /** How far it has fallen at its corner, dB. */
    public double fallAtCornerDecibels() {
        return -at(cornerHertz).decibels();
    }

    /**
     * Low-pass prototype at s = ix: first-order and second-order sections, s^2 + 2 sin((2k - 1) pi/2n) s + 1 for each pair of poles on
     * the unit circle (textbook). A high-pass is the prototype at -i/x, the mirror image.
     */
    private static Phasor butterworth(int order, double x) {
        Phasor below = order % 2 == 1 ? new Phasor(1, x) : Phasor.ONE;
        for (int k = 1; k <= order / 2; k++) {
            below = below.times(new Phasor(1 - x * x, 2 * Math.sin((2 * k - 1) * Math.PI / (2 * order)) * x));
        }
        return below.inverse();
    }
}
