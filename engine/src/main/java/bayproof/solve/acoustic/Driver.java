package bayproof.solve.acoustic;

/**
 * One speaker's small-signal data, or several alike that play one box together.
 *
 * @param resonanceHertz    free-air resonance fs
 * @param mechanicalQ       Qms
 * @param electricalQ       Qes, driven without resistance in the leads
 * @param volumeCubicMetres Vas, the volume of air as stiff as the suspension
 * @param coneSquareMetres  area of the cone Sd
 * @param directOhms        DC resistance of the voice coils as wired
 */
public record Driver(double resonanceHertz, double mechanicalQ, double electricalQ, double volumeCubicMetres, double coneSquareMetres,
                     double directOhms) {

    /** @throws IllegalArgumentException if a figure is not above 0 */
    public Driver {
        for (double one : new double[] {resonanceHertz, mechanicalQ, electricalQ, volumeCubicMetres, coneSquareMetres, directOhms}) {
            if (!(one > 0) || Double.isInfinite(one)) {
                throw new IllegalArgumentException("a driver with a figure of " + one + " cannot be");
            }
        }
    }

    /** 1/Qts = 1/Qms + 1/Qes. */
    public double totalQ() {
        return mechanicalQ * electricalQ / (mechanicalQ + electricalQ);
    }

    /**
     * Several alike in one box: the volume and the area multiply, resonance and Q stay (derived).
     *
     * @param count      how many
     * @param directOhms DC resistance of their net
     */
    public Driver several(int count, double directOhms) {
        return new Driver(resonanceHertz, mechanicalQ, electricalQ, volumeCubicMetres * count, coneSquareMetres * count, directOhms);
    }

    /** With a resistance in series, wire or coil: Qes grows by (Re + Rs)/Re. The resistance counts as part of the coil. */
    public Driver withSeries(double ohms) {
        return new Driver(resonanceHertz, mechanicalQ, electricalQ * (directOhms + ohms) / directOhms, volumeCubicMetres, coneSquareMetres,
                directOhms + ohms);
    }

    /** Share of the electrical power that comes out as sound into half space: rho (Bl)^2 Sd^2/(2 pi c Re Mms^2) (lecture notes 34870, lesson 7). */
    public double efficiency() {
        return Air.ROOM.density() * Math.pow(forceFactor() * coneSquareMetres / massKilograms(), 2) / (2 * Math.PI * Air.ROOM.speed() * directOhms);
    }

    /** Vas = rho c^2 Sd^2 Cms (lecture notes 34870, lesson 7), turned round. */
    double complianceMetresPerNewton() {
        return volumeCubicMetres / (Air.ROOM.density() * Math.pow(Air.ROOM.speed() * coneSquareMetres, 2));
    }

    /** Moving mass of the resonance fs = 1/(2 pi sqrt(M C)) (textbook). */
    double massKilograms() {
        return 1 / (Math.pow(2 * Math.PI * resonanceHertz, 2) * complianceMetresPerNewton());
    }

    double lossesKilogramsPerSecond() {
        return 2 * Math.PI * resonanceHertz * massKilograms() / mechanicalQ;
    }

    /** Qes = Re ws Mms/(Bl)^2 (lecture notes 34870, lesson 7), turned round. */
    double forceFactor() {
        return Math.sqrt(2 * Math.PI * resonanceHertz * massKilograms() * directOhms / electricalQ);
    }
}
