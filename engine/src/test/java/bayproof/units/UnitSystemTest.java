package bayproof.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values in pairs: NIST SP 811 (2008), appendix B.8 (inch, foot, cubic foot, pound, degree Fahrenheit, pound-force inch). */
class UnitSystemTest {

    @ParameterizedTest
    @CsvSource({"0.1778, LENGTH, 7 in", "1.016, LENGTH, 40 in", "1.8288, LENGTH, 6.00 ft", "5, LENGTH, 16.40 ft", "0.003, LENGTH, 0.118 in",
        "1.82879, LENGTH, 6.00 ft", "0, LENGTH, 0 in", "0.036, VOLUME, 1.27 ft3", "0.0005, VOLUME, 30.5 in3", "22.6796185, MASS, 50 lb",
        "0.4, MASS, 14.1 oz", "105, TEMPERATURE, 221 °F", "-40, TEMPERATURE, -40 °F", "0, TEMPERATURE, 32 °F", "8, TORQUE, 70.8 in-lb",
        "40, TORQUE, 29.5 ft-lb", "0.032, AREA, 49.6 in2", "80, CURRENT, 80 A", "0.85, RATIO, 85 %", "14400, TIME, 4 h"})
    void printsWhatATapeMeasureInInchesSays(double si, Dimension dimension, String printed) throws UnitException {
        try (UnitSystem.Scope us = UnitSystem.US.open()) {
            assertEquals(printed, Units.print(si, dimension));
            assertEquals(si, Units.parse(printed, dimension).si(), 0.00501 * Math.abs(si) + 1e-9);
        }
    }

    @Test
    void aDifferenceOfTemperaturesHasNoOffset() {
        assertEquals("25 °C", Units.printDifference(25, Dimension.TEMPERATURE));
        try (UnitSystem.Scope us = UnitSystem.US.open()) {
            assertEquals("45 °F", Units.printDifference(25, Dimension.TEMPERATURE));
            assertEquals("0 °F", Units.printDifference(0, Dimension.TEMPERATURE));
            assertEquals("7 in", Units.printDifference(0.1778, Dimension.LENGTH));
        }
    }

    @Test
    void theChoiceEndsWithItsScopeAndHoldsForOneThread() throws InterruptedException {
        try (UnitSystem.Scope us = UnitSystem.US.open()) {
            String[] elsewhere = new String[1];
            Thread other = new Thread(() -> elsewhere[0] = Units.print(1.016, Dimension.LENGTH));
            other.start();
            other.join();
            assertEquals("1.02 m", elsewhere[0]);
            try (UnitSystem.Scope metric = UnitSystem.METRIC.open()) {
                assertEquals("1.02 m", Units.print(1.016, Dimension.LENGTH));
            }
            assertEquals("40 in", Units.print(1.016, Dimension.LENGTH));
        }
        assertEquals("1.02 m", Units.print(1.016, Dimension.LENGTH));
    }

    @Test
    void whatWasWrittenStandsBesideWhatIsPrinted() {
        assertEquals("1.01 m", Units.alsoIn("1.01 m"));
        try (UnitSystem.Scope us = UnitSystem.US.open()) {
            assertEquals("39.8 in (1.01 m)", Units.alsoIn("1.01 m"));
            assertEquals("80 A", Units.alsoIn("80 A"));
            assertEquals("bare-metal", Units.alsoIn("bare-metal"));
        }
    }

    @ParameterizedTest
    @CsvSource({"18 inchs, inch", "100 watss, watts", "0.3 metres s, metres", "80 amsp, amp", "2 ohsm, ohm"})
    void aUnitThatIsNearlyRightIsSuggested(String text, String meant) {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parse(text));
        assertTrue(refusal.what().contains("did you mean " + meant + "?"), refusal.what());
    }

    @Test
    void onlyUnitsOfTheDimensionThatIsNeededAreSuggested() {
        UnitException refusal = assertThrows(UnitException.class, () -> Units.parse("0.3 mtr", Dimension.LENGTH));
        assertTrue(refusal.what().endsWith("did you mean meter?"), refusal.what());
    }
}
