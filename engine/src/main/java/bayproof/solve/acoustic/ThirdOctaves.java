package bayproof.solve.acoustic;

import java.util.List;

/** Third-octave bands after IEC 61260-1: exact centers in powers of ten, and the nominal ones they are called by (ISO 266). */
public final class ThirdOctaves {
    /** Nominal centers, 20 Hz to 20 kHz. */
    public static final List<Double> NOMINAL_HERTZ = List.of(20.0, 25.0, 31.5, 40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0,
            315.0, 400.0, 500.0, 630.0, 800.0, 1000.0, 1250.0, 1600.0, 2000.0, 2500.0, 3150.0, 4000.0, 5000.0, 6300.0, 8000.0, 10000.0,
            12500.0, 16000.0, 20000.0);
    private static final int OF_1_KHZ = 17;

    private ThirdOctaves() {
    }

    /** Exact center of a nominal one: 1000 x 10^(n/10); between two of them with a part of an index. */
    public static double exactHertz(double index) {
        return 1000 * Math.pow(10, (index - OF_1_KHZ) / 10.0);
    }

    /** Index of the band whose center lies nearest to a frequency; below 0 and above the last where the series goes on. */
    public static int nearest(double hertz) {
        return (int) Math.round(10 * Math.log10(hertz / 1000)) + OF_1_KHZ;
    }

    /** Lower edge of a band: its exact center times 10^(-1/20). */
    public static double lowerEdgeHertz(int index) {
        return exactHertz(index) * Math.pow(10, -0.05);
    }
}
