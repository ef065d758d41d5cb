package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.SharedTables;
import bayproof.support.Tally;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Ampacity against 33 CFR 183.425 Table 5, typed here from the regulation.
 *
 * <p>Not used: note 2 (bundles, for circuits of 50 V and more only), the bundle factors of NFPA 70 310.15(B)(3)(a)
 * (more than three current-carrying conductors in a raceway), and the ratings of FAA AC 43.13-1B Tables 11-3 and 11-9
 * (bundles at 57 °C or 70 °C and altitude): the engine has no function for any of them.
 */
class AmpacitySourcesTest {
    private static final double[] CLASSES = {60, 75, 80, 90, 105, 125, 200};

    private final Conductors conductors = SharedTables.conductors();

    private static Map<String, double[]> table5() {
        Map<String, double[]> rows = new LinkedHashMap<>();
        rows.put("18 AWG", new double[] {10, 10, 15, 20, 20, 25, 25});
        rows.put("16 AWG", new double[] {15, 15, 20, 25, 25, 30, 35});
        rows.put("14 AWG", new double[] {20, 20, 25, 30, 35, 40, 45});
        rows.put("12 AWG", new double[] {25, 25, 35, 40, 45, 50, 55});
        rows.put("10 AWG", new double[] {40, 40, 50, 55, 60, 70, 70});
        rows.put("8 AWG", new double[] {55, 65, 70, 70, 80, 90, 100});
        rows.put("6 AWG", new double[] {80, 95, 100, 100, 120, 125, 135});
        rows.put("4 AWG", new double[] {105, 125, 130, 135, 160, 170, 180});
        rows.put("3 AWG", new double[] {120, 145, 150, 155, 180, 195, 210});
        rows.put("2 AWG", new double[] {140, 170, 175, 180, 210, 225, 240});
        rows.put("1 AWG", new double[] {165, 195, 210, 210, 245, 265, 280});
        rows.put("1/0 AWG", new double[] {195, 230, 245, 245, 285, 305, 325});
        rows.put("2/0 AWG", new double[] {225, 265, 285, 285, 330, 355, 370});
        rows.put("3/0 AWG", new double[] {260, 310, 330, 330, 385, 410, 430});
        rows.put("4/0 AWG", new double[] {300, 360, 385, 385, 445, 475, 510});
        return rows;
    }

    /** 33 CFR 183.425 Table 5, every cell, at its own 30 °C; whole amperes, taken over exactly. */
    @Test
    void everyCellOfTable5() {
        int cells = 0;
        for (Map.Entry<String, double[]> row : table5().entrySet()) {
            for (int i = 0; i < CLASSES.length; i++) {
                double amperes = conductors.ampacityAmperes(row.getKey(), "copper", CLASSES[i], 30).orElseThrow();
                assertEquals(row.getValue()[i], amperes, 1e-9, row.getKey() + " at " + CLASSES[i]);
                cells++;
            }
        }
        assertEquals(105, cells);
        Tally.count("outside checks", cells);
    }

    /**
     * 33 CFR 183.425 Table 5 note 1, factors at 50 °C (that of 105 °C seen, the rest from memory). The engine may never
     * give more than the note, and gives no more than 0.01 (the note's own step) less, except for 200 °C insulation: the
     * note lets it keep everything, where the heat balance leaves sqrt(150/170) = 0.94.
     */
    @Test
    void engineSpaceFactors() {
        double[] note1 = {0.58, 0.75, 0.78, 0.82, 0.85, 0.89, 1.00};
        for (int i = 0; i < CLASSES.length; i++) {
            double factor = conductors.ampacityAmperes("4 AWG", "copper", CLASSES[i], 50).orElseThrow()
                    / table5().get("4 AWG")[i];
            assertTrue(factor <= note1[i] + 1e-12, CLASSES[i] + " degC: " + factor);
            assertEquals(CLASSES[i] == 200 ? 0.94 : note1[i], factor, 0.01, CLASSES[i] + " degC");
        }
        Tally.count("outside checks", note1.length);
    }
}
