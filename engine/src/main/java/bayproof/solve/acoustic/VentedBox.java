package bayproof.solve.acoustic;

/**
 * A driver in a vented box with leakage losses (lecture notes 34870, lesson 8).
 *
 * @param driver         the driver with what is in series with it
 * @param netCubicMetres volume of air, filling counted
 * @param port           the port
 * @param leakageQ       Q of the leaks at the tuning, QL; 5 to 20, 7 is usual
 */
public record VentedBox(Driver driver, double netCubicMetres, Port port, double leakageQ) implements Enclosure {
    /** Half of the power, in decibels. */
    private static final double HALF_POWER = 10 * Math.log10(0.5);
    /** A response that is looked for is looked for up to so many times the tuning, in steps of a hundredth of an octave. */
    private static final double FAR_UP = 20;
    private static final double STEP = Math.pow(2, 0.01);
    private static final int HALVINGS = 40;

    /** @throws IllegalArgumentException if no air is left or the losses cannot be */
    public VentedBox {
        if (!(netCubicMetres > 0) || !(leakageQ > 0)) {
            throw new IllegalArgumentException("a box of " + netCubicMetres + " m3 with a leakage Q of " + leakageQ + " cannot be");
        }
    }

    /** Tuning of box and port. */
    public double tuningHertz() {
        return port.tuningHertz(Air.ROOM, netCubicMetres);
    }

    /** Admittances of air, leak and port side by side. */
    @Override
    public Phasor airImpedance(double hertz) {
        double omega = 2 * Math.PI * hertz;
        double compliance = Air.ROOM.compliance(netCubicMetres);
        double leak = 2 * Math.PI * tuningHertz() * compliance / leakageQ;
        return Phasor.i(omega * compliance).plus(new Phasor(leak, 0)).plus(Phasor.i(omega * port.mass(Air.ROOM)).inverse()).inverse();
    }

    /** Peak speed of the air in the port for so many RMS volts at the driver and what is in series with it, m/s. */
    public double portMetresPerSecond(double hertz, double volts) {
        Phasor pressure = pressure(hertz).times(volts);
        double flow = pressure.magnitude() / (2 * Math.PI * hertz * port.mass(Air.ROOM));
        return flow * Math.sqrt(2) / port.allSquareMetres();
    }

    @Override
    public double cornerHertz() {
        double high = FAR_UP * tuningHertz();
        while (responseDecibels(high) > HALF_POWER) {
            high /= STEP;
        }
        double low = high;
        high *= STEP;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(low * high);
            if (responseDecibels(middle) > HALF_POWER) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.sqrt(low * high);
    }

    @Override
    public double peakDecibels() {
        double peak = 0;
        for (double hertz = tuningHertz() / FAR_UP; hertz < FAR_UP * tuningHertz(); hertz *= STEP) {
            peak = Math.max(peak, responseDecibels(hertz));
        }
        return peak;
    }

    @Override
    public VentedBox withVolume(double cubicMetres) {
        return new VentedBox(driver, cubicMetres, port, leakageQ);
    }
}
