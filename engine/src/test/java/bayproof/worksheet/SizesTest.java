package bayproof.worksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cable sizes beside their like in the other system. */
class SizesTest {
    /** Areas of the gauges as NBS Handbook 100 (1966) prints them after ASTM B258, to three digits. */
    @ParameterizedTest
    @CsvSource({"22 AWG, 0.326 mm2", "18 AWG, 0.823 mm2", "14 AWG, 2.08 mm2", "12 AWG, 3.31 mm2", "10 AWG, 5.26 mm2", "8 AWG, 8.37 mm2", "6 AWG, 13.3 mm2",
        "4 AWG, 21.2 mm2", "2 AWG, 33.6 mm2", "1/0 AWG, 53.5 mm2", "2/0 AWG, 67.4 mm2", "4/0 AWG, 107 mm2"})
    void aGaugeHasItsMetal(String gauge, String metal) {
        assertEquals(metal, Sizes.other(gauge));
    }

    /** Nearest by the same table: 25 mm2 lies between 21.15 (4 AWG) and 26.67 (3 AWG), 35 mm2 between 33.63 (2) and 42.41 (1). */
    @ParameterizedTest
    @CsvSource({"25 mm2, near 3 AWG", "35 mm2, near 2 AWG", "2.5 mm2, near 13 AWG", "50 mm2, near 1/0 AWG", "1.5 mm2, near 15 AWG"})
    void aMetricSizeHasAGaugeNearIt(String size, String gauge) {
        assertEquals(gauge, Sizes.other(size));
    }
}
