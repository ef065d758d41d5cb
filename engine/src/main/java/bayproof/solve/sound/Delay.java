package bayproof.solve.sound;

/** Speed of sound and the delays that bring speakers at different distances together. */
public final class Delay {
    private static final double AT_FREEZING = 331.3;
    private static final double PER_DEGREE = 0.606;

    private Delay() {
    }

    /** Speed of sound in air, m/s: 331.3 + 0.606 T, T in °C (textbook physics). */
    public static double metresPerSecond(double celsius) {
        return AT_FREEZING + PER_DEGREE * celsius;
    }

    /** Delay of a speaker so that it arrives with the farthest: (d_max - d)/c. */
    public static double seconds(double farthestMetres, double metres, double celsius) {
        return (farthestMetres - metres) / metresPerSecond(celsius);
    }
}
