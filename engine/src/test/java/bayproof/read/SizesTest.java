package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas of gauges: ASTM B258, as in NFPA 70 Chapter 9 Table 8 (4 AWG 21.15 mm2, 8 AWG 8.367, 1/0 53.49, 4/0 107.2). */
class SizesTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"4 AWG | 4 AWG (21.2 mm2)", "8 AWG | 8 AWG (8.37 mm2)", "1/0 AWG | 1/0 AWG (53.5 mm2)",
        "4/0 AWG | 4/0 AWG (107 mm2)", "25 mm2 | 25 mm2 (4 to 3 AWG)", "10 mm2 | 10 mm2 (8 to 7 AWG)", "50 mm2 | 50 mm2 (1 to 1/0 AWG)",
        "Use 10 AWG for this run. | Use 10 AWG (5.26 mm2) for this run.", "4 AWG (21.2 mm2) | 4 AWG (21.2 mm2)",
        "25 mm2 (4 to 3 AWG) | 25 mm2 (4 to 3 AWG)", "41 AWG | 41 AWG", "an area of 7 mm2 | an area of 7 mm2", "no size | no size"})
    void bothSystemsStandSideBySide(String text, String both) {
        assertEquals(both, Sizes.bothWays(text));
        assertEquals(both, Sizes.bothWays(both));
    }
}
