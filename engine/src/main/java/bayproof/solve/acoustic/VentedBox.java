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

    /** Q of the driver at the tuning for a maximally flat response of fourth order: 1/(2.6131 - 1/QL), tuned to its resonance. */
    public static double flatTotalQ(double leakageQ) {
        return 1 / (2.6131 - 1 / leakageQ);
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
    public VentedBox withVolume(double cubicMetres) {
        return new VentedBox(driver, cubicMetres, port, leakageQ);
    }
}
