package bayproof.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintTest {

    @ParameterizedTest
    @CsvSource({
        "0.4572, LENGTH, 457 mm", "0.178, LENGTH, 178 mm", "0.0127, LENGTH, 12.7 mm", "1.2, LENGTH, 1.20 m",
        "12.346, LENGTH, 12.35 m", "0.99949, LENGTH, 999 mm", "0.9996, LENGTH, 1.00 m", "-0.5, LENGTH, -500 mm",
        "0, LENGTH, 0 m", "-1e-9, LENGTH, 0 mm", "0.03, CURRENT, 30 mA", "7.142857, CURRENT, 7.14 A", "80, CURRENT, 80 A",
        "1234.4, CURRENT, 1234 A", "9.996, CURRENT, 10 A", "14.4, VOLTAGE, 14.4 V", "11.881, VOLTAGE, 11.88 V",
        "0.0451, VOLTAGE, 45.1 mV", "0, VOLTAGE, 0 V", "2, RESISTANCE, 2 ohm", "0.25, RESISTANCE, 0.25 ohm",
        "0.00133, RESISTANCE, 1.33 mohm", "0.0999, RESISTANCE, 99.9 mohm", "4700, RESISTANCE, 4.7 kohm", "95, POWER, 95 W",
        "1066.7, POWER, 1067 W", "0.05, POWER, 50 mW", "105, TEMPERATURE, 105 °C", "-18, TEMPERATURE, -18 °C",
        "22.55, TEMPERATURE, 22.6 °C", "0.85, RATIO, 85 %", "0.166667, RATIO, 16.7 %", "0.0025, RATIO, 0.25 %",
        "28, FREQUENCY, 28 Hz", "1000, FREQUENCY, 1 kHz", "3150, FREQUENCY, 3.15 kHz", "93700000, FREQUENCY, 93.7 MHz",
        "14400, TIME, 4 h", "1800, TIME, 30 min", "0.0012, TIME, 1.2 ms", "90, TIME, 90 s", "119.6, TIME, 2 min", "0.036, VOLUME, 36 L",
        "0.00005, VOLUME, 50 mL", "22.68, MASS, 22.7 kg", "0.4, MASS, 400 g", "0.032, AREA, 320 cm2",
        "0.000025, AREA, 25 mm2", "252000, CHARGE, 70 Ah", "8, TORQUE, 8 N m", "0.0000047, CAPACITANCE, 4.7 uF",
        "0.00033, INDUCTANCE, 0.33 mH", "0.00005, INDUCTANCE, 50 uH", "-5, LEVEL, -5 dB"})
    void printsTheTradesForm(double si, Dimension dimension, String printed) {
        assertEquals(printed, Units.print(si, dimension));
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThrows(IllegalArgumentException.class, () -> Units.print(Double.NaN, Dimension.CURRENT));
    }

    @Test
    void theMachinesLanguageChangesNothing() throws UnitException {
        Locale before = Locale.getDefault();
        try {
            for (Locale locale : new Locale[] {Locale.GERMANY, Locale.forLanguageTag("ar-EG"), Locale.forLanguageTag("tr-TR")}) {
                Locale.setDefault(locale);
                assertEquals("12.35 m", Units.print(12.346, Dimension.LENGTH));
                assertEquals(0.4572, Units.parse("18 IN").si());
                assertEquals(120, Units.parse("2 MINUTES").si());
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Largest values a vehicle job can have; the property draws from a millionth of each up to it. */
    private static final Map<Dimension, Double> LARGEST = Map.ofEntries(
            Map.entry(Dimension.LENGTH, 30.0), Map.entry(Dimension.AREA, 20.0), Map.entry(Dimension.VOLUME, 20.0),
            Map.entry(Dimension.MASS, 5000.0), Map.entry(Dimension.TIME, 1e6), Map.entry(Dimension.FREQUENCY, 1e9),
            Map.entry(Dimension.CURRENT, 20000.0), Map.entry(Dimension.VOLTAGE, 400.0), Map.entry(Dimension.RESISTANCE, 1e5),
            Map.entry(Dimension.POWER, 20000.0), Map.entry(Dimension.CHARGE, 5e6), Map.entry(Dimension.TORQUE, 300.0), Map.entry(Dimension.FORCE, 1e5), Map.entry(Dimension.SPEED, 400.0),
            Map.entry(Dimension.CAPACITANCE, 1e-3), Map.entry(Dimension.INDUCTANCE, 1.0), Map.entry(Dimension.LEVEL, 200.0),
            Map.entry(Dimension.TEMPERATURE, 270.0), Map.entry(Dimension.RATIO, 20.0));

    @Provide
    Arbitrary<Quantity> quantities() {
        return Combinators.combine(Arbitraries.of(Dimension.class), Arbitraries.doubles().between(-6, 0), Arbitraries.of(1, -1))
                .as((dimension, exponent, sign) -> new Quantity(sign * LARGEST.get(dimension) * Math.pow(10, exponent), dimension));
    }

    /** Three digits are kept at least (0.5 % of the value), or half of a thousandth of the smallest printed unit. */
    @Property(tries = 3000)
    void whatIsPrintedIsReadBack(@ForAll("quantities") Quantity quantity) throws UnitException {
        String printed = Units.print(quantity.si(), quantity.dimension());
        assertTrue(printed.matches("-?[0-9]+(\\.[0-9]+)? \\S.*"), printed);
        assertFalse(printed.matches("-0(\\.0+)? .*"), printed);
        Quantity back = Units.parse(printed, quantity.dimension());
        double smallestStep = switch (quantity.dimension()) {
            case LENGTH, RESISTANCE, TIME, MASS, CURRENT, VOLTAGE, POWER -> 1e-6;
            case AREA, VOLUME -> 1e-9;
            case CHARGE -> 3.6e-3;
            case RATIO -> 1e-5;
            case TORQUE, TEMPERATURE, FREQUENCY, FORCE, LEVEL, SPEED -> 1e-3;
            case CAPACITANCE, INDUCTANCE -> 1e-9;
        };
        assertEquals(quantity.si(), back.si(), 0.00501 * Math.abs(quantity.si()) + smallestStep / 2, printed);
        assertEquals(printed, Units.print(back.si(), back.dimension()), "printing again changes nothing");
    }

    /** A number with up to three digits survives reading and printing in its own unit. */
    @Property(tries = 500)
    void aShortNumberIsKept(@ForAll("shortNumbers") String number) throws UnitException {
        Quantity first = Units.parse(number + " V");
        assertEquals(first, Units.parse(Units.print(first.si(), first.dimension())));
        Quantity ohms = Units.parse(number + " ohm");
        assertEquals(ohms, Units.parse(Units.print(ohms.si(), ohms.dimension())));
    }

    @Provide
    Arbitrary<String> shortNumbers() {
        return Combinators.combine(Arbitraries.integers().between(0, 999), Arbitraries.integers().between(0, 2))
                .as((digits, decimals) -> java.math.BigDecimal.valueOf(digits, decimals).toPlainString());
    }
}
