package bayproof.solve.acoustic;

/**
 * The port of a vented box: one or several alike, one end flush in a wall and the other free inside.
 *
 * @param count            how many
 * @param areaSquareMetres open area of one
 * @param lengthMetres     length of each
 */
public record Port(int count, double areaSquareMetres, double lengthMetres) {
    /** End correction of a flush end, as a share of the radius: 8/(3 pi) (lecture notes 34870, lesson 8, sections 11 and 12). */
    public static final double FLUSH_END = 8 / (3 * Math.PI);
    /** That of a free end (same). */
    public static final double FREE_END = 0.6133;

    /** @throws IllegalArgumentException if there is no opening or the length is below 0 */
    public Port {
        if (count < 1 || !(areaSquareMetres > 0) || !(lengthMetres >= 0)) {
            throw new IllegalArgumentException(count + " ports of " + areaSquareMetres + " m2 and " + lengthMetres + " m cannot be");
        }
    }

    /** Area of a round port. */
    public static double roundArea(double diameterMetres) {
        return Math.PI * diameterMetres * diameterMetres / 4;
    }

    /** Radius of a round port, or of the round one with the area of a slot (common practice; real slots tune lower, no source). */
    public double radiusMetres() {
        return Math.sqrt(areaSquareMetres / Math.PI);
    }

    /** Open area of all. */
    public double allSquareMetres() {
        return areaSquareMetres * count;
    }

    private double actingMetres(double corrections) {
        return lengthMetres + corrections * radiusMetres();
    }

    /** Mass of the air that moves, one end flush and one free: rho L/S, kg/m4. */
    double mass(Air air) {
        return air.density() * actingMetres(FLUSH_END + FREE_END) / allSquareMetres();
    }

    /** Tuning of a box: c/(2 pi) sqrt(S/(V L)), L with the corrections of both ends. */
    public double tuningHertz(Air air, double netCubicMetres) {
        return tuningHertz(air, netCubicMetres, FLUSH_END + FREE_END);
    }

    /**
     * The same with other ends.
     *
     * @param corrections sum of the corrections of both ends, as a share of the radius
     */
    public double tuningHertz(Air air, double netCubicMetres, double corrections) {
        return air.speed() / (2 * Math.PI) * Math.sqrt(allSquareMetres() / (netCubicMetres * actingMetres(corrections)));
    }

    /**
     * Length for a tuning: c^2 S/(4 pi^2 f^2 V) less the corrections.
     *
     * @return meters; below 0 where the port is too wide for that tuning
     */
    public static double lengthFor(Air air, int count, double areaSquareMetres, double hertz, double netCubicMetres) {
        double acting = Math.pow(air.speed() / (2 * Math.PI * hertz), 2) * areaSquareMetres * count / netCubicMetres;
        return acting - (FLUSH_END + FREE_END) * Math.sqrt(areaSquareMetres / Math.PI);
    }

    /** Room that the ports take inside a box: their outside over the length inside. */
    public static double displacement(int count, double outerSquareMetres, double lengthMetres) {
        return count * outerSquareMetres * lengthMetres;
    }
}
