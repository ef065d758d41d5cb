package bayproof.solve.acoustic;

/**
 * A driver in a box, driven by a source of fixed volts: the complete analogous circuit, without the inductance of the voice coil.
 * Peak values are root two times RMS; the limits of linear travel are not in it.
 */
public sealed interface Enclosure permits ClosedBox, VentedBox {
    Driver driver();

    /** Volume of air, filling counted. */
    double netCubicMetres();

    /** The same with another volume. */
    Enclosure withVolume(double cubicMetres);

    /** Acoustic impedance that the box is to the back of the cone. */
    Phasor airImpedance(double hertz);

    /** Where its response has fallen 3 dB below the level far up, Hz. */
    double cornerHertz();

    /** Height of the peak of its response above the level far up, dB; 0 where it has none. */
    double peakDecibels();

    /** Velocity of the cone for 1 V at the driver and what is in series with it. */
    private Phasor velocity(double hertz) {
        Driver driver = driver();
        double force = driver.forceFactor() / driver.directOhms();
        return new Phasor(force, 0).over(mechanicalImpedance(hertz).plus(new Phasor(driver.forceFactor() * force, 0)));
    }

    private Phasor mechanicalImpedance(double hertz) {
        Driver driver = driver();
        double omega = 2 * Math.PI * hertz;
        return new Phasor(driver.lossesKilogramsPerSecond(), omega * driver.massKilograms() - 1 / (omega * driver.complianceMetresPerNewton()))
                .plus(airImpedance(hertz).times(Math.pow(driver.coneSquareMetres(), 2)));
    }

    /** Pressure in the box for 1 V. */
    default Phasor pressure(double hertz) {
        return velocity(hertz).times(driver().coneSquareMetres()).times(airImpedance(hertz));
    }

    /** Peak travel of the cone to one side for so many RMS volts, meters. */
    default double travelMetres(double hertz, double volts) {
        return velocity(hertz).magnitude() * volts * Math.sqrt(2) / (2 * Math.PI * hertz);
    }

    /**
     * Response against the level far above the resonance: what the box's air takes up is what cone, port and leaks send out
     * together.
     *
     * @return decibels
     */
    default double responseDecibels(double hertz) {
        return response(hertz).decibels();
    }

    /** The same with its phase. */
    default Phasor response(double hertz) {
        Driver driver = driver();
        double omega = 2 * Math.PI * hertz;
        Phasor taken = pressure(hertz).times(Phasor.i(omega * Air.ROOM.compliance(netCubicMetres())));
        double farUp = driver.forceFactor() * driver.coneSquareMetres() / (driver.directOhms() * driver.massKilograms());
        return taken.times(Phasor.i(omega)).times(1 / farUp);
    }

    /** Electrical impedance of the driver in the box and what is in series with it, ohm. */
    default double impedanceOhms(double hertz) {
        double square = Math.pow(driver().forceFactor(), 2);
        return new Phasor(driver().directOhms(), 0).plus(mechanicalImpedance(hertz).inverse().times(square)).magnitude();
    }
}
