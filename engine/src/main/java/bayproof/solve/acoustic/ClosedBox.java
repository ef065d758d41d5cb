package bayproof.solve.acoustic;

/**
 * A driver in a closed box (lecture notes 34870, lesson 8; a hobby page on sealed boxes agrees). alpha = Vas/Vb.
 *
 * @param driver         the driver with what is in series with it
 * @param netCubicMetres volume of air, filling counted
 */
public record ClosedBox(Driver driver, double netCubicMetres) implements Enclosure {
    private static final double FLAT = Math.sqrt(0.5);

    /** @throws IllegalArgumentException if no air is left */
    public ClosedBox {
        if (!(netCubicMetres > 0)) {
            throw new IllegalArgumentException("a box of " + netCubicMetres + " m3 cannot be");
        }
    }

    private double stiffening() {
        return Math.sqrt(1 + driver.volumeCubicMetres() / netCubicMetres);
    }

    /** Resonance in the box: fs sqrt(1 + alpha). */
    public double resonanceHertz() {
        return driver.resonanceHertz() * stiffening();
    }

    /** Total Q in the box: Qts sqrt(1 + alpha). */
    public double totalQ() {
        return driver.totalQ() * stiffening();
    }

    /** Where it has fallen 3 dB: fc sqrt(x + sqrt(x^2 + 1)), x = 1/(2 Qtc^2) - 1. */
    @Override
    public double cornerHertz() {
        double x = 1 / (2 * totalQ() * totalQ()) - 1;
        return resonanceHertz() * Math.sqrt(x + Math.sqrt(x * x + 1));
    }

    /** Height of the peak above the level far up: 20 log10(Qtc^2/sqrt(Qtc^2 - 1/4)); 0 up to a Q of 0.7071. */
    @Override
    public double peakDecibels() {
        double square = totalQ() * totalQ();
        return totalQ() <= FLAT ? 0 : 20 * Math.log10(square / Math.sqrt(square - 0.25));
    }

    /** Where the peak is: fc/sqrt(1 - 1/(2 Qtc^2)); infinite without a peak. */
    public double peakHertz() {
        return totalQ() <= FLAT ? Double.POSITIVE_INFINITY : resonanceHertz() / Math.sqrt(1 - 1 / (2 * totalQ() * totalQ()));
    }

    /**
     * Volume for a total Q: Vas/((Qtc/Qts)^2 - 1).
     *
     * @return cubic meters; infinite where the driver's own Q is not below it
     */
    public static double volumeFor(Driver driver, double totalQ) {
        double square = Math.pow(totalQ / driver.totalQ(), 2) - 1;
        return square <= 0 ? Double.POSITIVE_INFINITY : driver.volumeCubicMetres() / square;
    }

    @Override
    public Phasor airImpedance(double hertz) {
        return Phasor.i(2 * Math.PI * hertz * Air.ROOM.compliance(netCubicMetres)).inverse();
    }

    @Override
    public ClosedBox withVolume(double cubicMetres) {
        return new ClosedBox(driver, cubicMetres);
    }
}
