package bayproof.units;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "18 in | LENGTH | 0.4572", "18\" | LENGTH | 0.4572", "18″ | LENGTH | 0.4572", "18'' | LENGTH | 0.4572",
        "18 inches | LENGTH | 0.4572", "6 ft | LENGTH | 1.8288", "6' | LENGTH | 1.8288", "0.45 m | LENGTH | 0.45",
        "0.18m | LENGTH | 0.18", "178 mm | LENGTH | 0.178", "178 MM | LENGTH | 0.178", "45 cm | LENGTH | 0.45",
        "30 mA | CURRENT | 0.03", "80 A | CURRENT | 80", "80 amps | CURRENT | 80", "14.4 V | VOLTAGE | 14.4",
        "14.4 v | VOLTAGE | 14.4", "125 mV | VOLTAGE | 0.125", "2 ohm | RESISTANCE | 2", "2Ω | RESISTANCE | 2",
        "2 Ω | RESISTANCE | 2", "2 Ohms | RESISTANCE | 2", "250 mOhm | RESISTANCE | 0.25",
        "250 mohm | RESISTANCE | 0.25", "250 mΩ | RESISTANCE | 0.25", "10 kohm | RESISTANCE | 10000",
        "95 W | POWER | 95", "100 watts | POWER | 100", "105 °C | TEMPERATURE | 105", "105ºC | TEMPERATURE | 105",
        "105 ℃ | TEMPERATURE | 105", "105C | TEMPERATURE | 105", "-18 °C | TEMPERATURE | -18",
        "−18 °C | TEMPERATURE | -18", "221 °F | TEMPERATURE | 105", "85 % | RATIO | 0.85", "85% | RATIO | 0.85",
        "28 Hz | FREQUENCY | 28", "1 kHz | FREQUENCY | 1000", "1 khz | FREQUENCY | 1000", "36 L | VOLUME | 0.036",
        "36 l | VOLUME | 0.036", "1 ft³ | VOLUME | 0.028316846592", "4 h | TIME | 14400", "0.2 hours | TIME | 720",
        "30 min | TIME | 1800", "1.2 ms | TIME | 0.0012", "50 lb | MASS | 22.6796185", "400 g | MASS | 0.4",
        "320 cm² | AREA | 0.032", "70 Ah | CHARGE | 252000", "8 N m | TORQUE | 8", "8 N·m | TORQUE | 8",
        "12 V DC | VOLTAGE | 12",
        "12VDC | VOLTAGE | 12", "3/8 in | LENGTH | 0.009525", "3/8\" | LENGTH | 0.009525", "1 1/2 in | LENGTH | 0.0381",
        "1-1/2 inch | LENGTH | 0.0381", "5'6\" | LENGTH | 1.6764", "5 ft 6 in | LENGTH | 1.6764", "5' 6.5\" | LENGTH | 1.6891",
        "5 ft 6 1/2 in | LENGTH | 1.6891", "1/64 in | LENGTH | 0.000396875", "+5 V | VOLTAGE | 5", ".5 in | LENGTH | 0.0127", "010 A | CURRENT | 10", "  12 V  | VOLTAGE | 12"})
    void readsWhatPeopleWrite(String text, Dimension dimension, double si) throws UnitException {
        assertEquals(new Quantity(si, dimension), Units.parse(text));
        assertEquals(new Quantity(si, dimension), Units.parse(text, dimension));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "18 | no unit", "18 inchs | unit \"inchs\"", "1,5 m | comma", "1,000 W | comma", "1 000 W | thousands mark",
        "1'000 m | thousands mark", "1_000 m | thousands mark", "1.2.3 m | more than one number", "1e3 m | power of ten",
        "1e400 m | power of ten", "1E-3 m | power of ten", "0x10 m | unit \"x10 m\"", "NaN m | begin with a number",
        "Infinity V | begin with a number", "m | begin with a number", "٣ m | begin with a number",
        "- 5 V | begin with a number", "5. in | unit \". in\"", "3/8 m | fraction", "3/7 in | fraction",
        "8/8 in | fraction", "½ in | fraction", "1½ in | fraction", "5'16\" | two units", "5 ft 60 in | two units", "5.5 ft 6 in | two units",
        "12 V AC | direct current", "100 W RMS | how the power was rated", "1000 watts max | how the power was rated", "250 MOhm | capitals matter",
        "30 MA | capitals matter", "100 Mhz | capitals matter", "5 M | capitals matter", "20 G | capitals matter",
        "4 H | capitals matter", "1 F | unit \"F\"", "-300 °C | absolute zero", "1234567890123456789012345678.5 m | too long"})
    void refusesWithTheReason(String text, String reason) {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parse(text));
        assertTrue(refusal.what().contains(reason), refusal.what());
        assertTrue(refusal.fix().startsWith("Write "), refusal.fix());
        assertEquals(refusal.what() + " " + refusal.fix(), refusal.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\t\n", "\u2003"})
    void refusesNothing(String text) {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parse(text, Dimension.LENGTH));
        assertEquals("Nothing is written where a length is needed. Write a length as \"18 in\" or \"0.45 m\".", refusal.getMessage());
        assertThrows(UnitException.class, () -> Units.parse(null));
    }

    @Test
    void aMissingUnitIsSuggestedForTheDimensionThatIsNeeded() {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parse("18", Dimension.LENGTH));
        assertEquals("\"18\" has no unit. Write a length as \"18 in\" or \"0.45 m\".", refusal.getMessage());
    }

    @Test
    void anotherDimensionIsNamed() {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parse("30 mA", Dimension.LENGTH));
        assertEquals("\"30 mA\" is a current, and a length is needed here.", refusal.what());
    }

    @Test
    void messagesCarryNoControlCharacters() {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parse("5 \u001b[31m"));
        assertFalse(refusal.getMessage().contains("\u001b"));
    }

    @Test
    void exactSpellingsOfOneLengthGiveOneDouble() throws UnitException {
        assertEquals(Units.parse("0.4572 m"), Units.parse("18 in"));
        assertEquals(Units.parse("0.1 m"), Units.parse("100 mm"));
        assertEquals(Units.parse("1.2 ms"), Units.parse("0.0012 s"));
    }

    @Test
    void aNegativeZeroIsZero() throws UnitException {
        assertEquals(0, Double.compare(0.0, Units.parse("-0 V").si()));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyExampleInAMessageIsReadAsSuch(Dimension dimension) {
        String[] parts = dimension.examples().split("\"");
        assertTrue(parts.length >= 2);
        assertAll(java.util.stream.IntStream.iterate(1, i -> i < parts.length, i -> i + 2)
                .mapToObj(i -> () -> assertEquals(dimension, Units.parse(parts[i]).dimension())));
        assertEquals(dimension, Dimension.ofSymbol(dimension.symbol()));
    }

    @Test
    void anUnknownSymbolHasNoDimension() {
        assertThrows(IllegalArgumentException.class, () -> Dimension.ofSymbol("furlong"));
    }

    @Test
    void aQuantityIsFinite() {
        assertThrows(IllegalArgumentException.class, () -> new Quantity(Double.NaN, Dimension.LENGTH));
        assertThrows(IllegalArgumentException.class, () -> new Quantity(Double.POSITIVE_INFINITY, Dimension.LENGTH));
    }

    @Test
    void noSpellingHasTwoMeaningsAndAllAreRead() throws UnitException {
        for (String spelling : UnitTable.spellings()) {
            assertEquals(UnitTable.find(spelling).dimension(), Units.parse("5 " + spelling).dimension(), spelling);
            assertEquals(Units.parse("5 " + spelling), Units.parse("5" + spelling), spelling);
        }
    }
}
