package bayproof.solve;

/** American wire gauge by ASTM B258: gauge 36 is 0.0050 in, 4/0 is 0.4600 in, and 39 equal ratios lie between. */
final class Gauge {
    /** Thinnest and thickest gauge with data: 22 AWG and 4/0 AWG (1/0 counts as 0, 2/0 as -1 and so on). */
    static final int THINNEST = 22;
    static final int THICKEST = -3;

    private static final double GAUGE_36_METRES = 0.000127;
    private static final double RATIO_OF_ENDS = 92;
    private static final int STEPS = 39;

    private Gauge() {
    }

    static String name(int number) {
        return (number > 0 ? String.valueOf(number) : (1 - number) + "/0") + " AWG";
    }

    static double areaSquareMetres(int number) {
        double diameter = GAUGE_36_METRES * Math.pow(RATIO_OF_ENDS, (36.0 - number) / STEPS);
        return Math.PI / 4 * diameter * diameter;
    }
}
