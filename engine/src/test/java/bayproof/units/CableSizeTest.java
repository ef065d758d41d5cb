package bayproof.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CableSizeTest {

    @ParameterizedTest
    @CsvSource({"4 AWG, 4 AWG", "4AWG, 4 AWG", "4 awg, 4 AWG", "4 ga, 4 AWG", "4 gauge, 4 AWG", "1/0, 1/0 AWG", "1/0 AWG, 1/0 AWG",
        "2/0 ga, 2/0 AWG", "0 AWG, 1/0 AWG", "000 AWG, 3/0 AWG", "0000 gauge, 4/0 AWG", "25 mm2, 25 mm2", "25 mm², 25 mm2",
        "25mm2, 25 mm2", "25.0 mm^2, 25 mm2", "0.50 mm2, 0.5 mm2", "100 mm2, 100 mm2", "' 18 AWG ', 18 AWG",
        "AWG 4, 4 AWG", "AWG4, 4 AWG", "AWG 1/0, 1/0 AWG", "4-gauge, 4 AWG", "16 square mm, 16 mm2", "4 ga., 4 AWG"})
    void givesTheOneName(String text, String name) throws UnitException {
        assertEquals(name, Units.parseSize(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "0", "5/0", "0/0", "41 AWG", "04 AWG", "-4 AWG", "4.5 AWG", "0 mm2", "25,0 mm2", "25 mm", "4 AWG 2",
        "four AWG", "00000 AWG", "4 AWG or thicker if there is room"})
    void refusesAndListsWhatIsRead(String text) {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parseSize(text));
        assertTrue(refusal.fix().contains("4 AWG") && refusal.fix().contains("1/0") && refusal.fix().contains("25 mm2"), refusal.fix());
        assertTrue(refusal.what().contains(text.substring(0, 1)), refusal.what());
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', value = {"4, gauge or square millimeters", "16, gauge or square millimeters", "25 mm, is a length",
        "1/4\", is not a cable size", "0.5 in, is a length", "AWG 41, is not a cable size"})
    void refusesWhatCanBeReadTwoWays(String text, String reason) {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parseSize(text));
        assertTrue(refusal.what().contains(reason), refusal.what());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  "})
    void refusesNothing(String text) {
        assertTrue(assertThrows(UnitException.class, () -> Units.parseSize(text)).what().contains("cable size"));
        assertThrows(UnitException.class, () -> Units.parseSize(null));
    }

    @Property
    void aNameIsItsOwnName(@ForAll @IntRange(min = 1, max = 40) int gauge, @ForAll @IntRange(min = 1, max = 4) int zeros,
                           @ForAll @IntRange(min = 1, max = 9999) int hundredths) throws UnitException {
        for (String text : new String[] {gauge + " AWG", zeros + "/0 AWG",
            java.math.BigDecimal.valueOf(hundredths, 2).stripTrailingZeros().toPlainString() + " mm2"}) {
            assertEquals(text, Units.parseSize(text));
        }
    }
}
