package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import bayproof.support.Tally;
import org.junit.jupiter.api.Test;

/** Published worked examples of a source with internal resistance, each within half a unit of its last digit. */
class PublishedResistanceTest {
    /** OpenStax College Physics, cnx.org/content/m42357: 12.0 V, 0.100 ohm inside, 10.0 ohm: 1.188 A, 11.90 V. */
    @Test
    void collegePhysicsTerminalVoltage() {
        OperatingPoint point = solve(12.0, 0.100, 10.0);

        assertEquals(1.188, point.sourceAmperes("battery"), 0.0005);
        // The text multiplies its rounded current and prints 11.9 V (11.90 V in the later edition, whose last digit is
        // off: 12.0 - 1.188 x 0.100 = 11.8812): the printed digit that holds is the tenth.
        assertEquals(11.9, point.loadVolts("load"), 0.05);
        Tally.count("outside checks", 2);
    }

    /** JAMB 2023, question on pastquestions.ng: 12.0 V, 1.0 ohm inside, 3.0 ohm: 3 A, 36 W from the battery. */
    @Test
    void examinationPowerOfABattery() {
        OperatingPoint point = solve(12.0, 1.0, 3.0);

        double amperes = point.sourceAmperes("battery");
        assertEquals(3, amperes, 0.5);
        assertEquals(36, 12.0 * amperes, 0.5);
        Tally.count("outside checks", 2);
    }

    private static OperatingPoint solve(double restVolts, double internalOhms, double ohms) {
        return assertInstanceOf(OperatingPoint.class, Solver.solve(new Network.Builder("minus")
                .battery("battery", "plus", "minus", restVolts, internalOhms, 0)
                .resistive("load", "plus", "minus", ohms, 0)
                .build()));
    }
}
