package bayproof.solve.acoustic;

/**
 * What of a box is air.
 *
 * @param grossCubicMetres inside of the walls
 * @param speakers         what all speakers take, as their maker states it
 * @param port             what the ports take, walls counted
 * @param bracing          what braces and anything else inside take
 */
public record NetVolume(double grossCubicMetres, double speakers, double port, double bracing) {
    /** Air that is left; can be below 0. */
    public double cubicMetres() {
        return grossCubicMetres - speakers - port - bracing;
    }

    /**
     * The volume that the speaker feels with filling: 10 % to 20 % more, at most 1.4 times where all changes are isothermal (lecture
     * notes 34870, lesson 8).
     *
     * @param gain share that the filling adds, 0 to 0.4
     */
    public double felt(double gain) {
        return cubicMetres() * (1 + gain);
    }
}
