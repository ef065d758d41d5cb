package bayproof.solve.sound;

/** The impedance of one driver about its resonance, from the data of its maker. */
public final class DriverImpedance {

    /**
     * The resonance as a parallel circuit in series with the voice coil.
     *
     * @param ohms    resistance
     * @param farads  capacitance
     * @param henries inductance
     */
    public record Circuit(double ohms, double farads, double henries) {
    }

    private DriverImpedance() {
    }

    /**
     * Impedance at resonance from the motor: Zmax = Re + (Bl)^2/Rms (lecture notes 34870 of a technical university, lesson 7).
     *
     * @param directOhms  DC resistance Re
     * @param forceFactor Bl, N/A
     * @param losses      mechanical losses Rms, kg/s
     */
    public static double peakOhms(double directOhms, double forceFactor, double losses) {
        return directOhms + forceFactor * forceFactor / losses;
    }

    /**
     * The circuit of the resonance: R = Re Qms/Qes, C = Qes/(2 pi fs Re), L = Re/(2 pi fs Qes) (same lecture notes; an acoustics
     * consultant's article on the driver's equivalent circuit). R + Re is the impedance at resonance.
     */
    public static Circuit resonance(double directOhms, double mechanicalQ, double electricalQ, double hertz) {
        double omega = 2 * Math.PI * hertz;
        return new Circuit(directOhms * mechanicalQ / electricalQ, electricalQ / (omega * directOhms), directOhms / (omega * electricalQ));
    }
}
