package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The statements on how a battery and a regulated source behave, each with values worked out by hand. */
class SourceConditionsTest {
    /** Far above rounding, far below any difference that matters. */
    private static final double CLOSE = 1e-9;

    /**
     * A battery of 12.6 V, 0.02 ohm, accepting 20 A, an alternator and a load of a held current on one pair of nodes.
     */
    @ParameterizedTest(name = "{7}")
    @CsvSource({
        // 90 + 20 A asked above rest, 100 A there: at rest the alternator's 100 A leave 100 - 90 = 10 A to take.
        "14.4, 100,  90, 12.6, -10, 100, AT_REST_VOLTS AT_LIMIT,              battery takes what is left",
        // 14.4 V is above rest: takes 20 A; the alternator gives 30 + 20 = 50 A, below its 100 A.
        "14.4, 100,  30, 14.4, -20,  50, TAKING_ACCEPTANCE HOLDING_SET_POINT, charging",
        // 80 + 20 = 100 A: exactly the limit, still at the set point.
        "14.4, 100,  80, 14.4, -20, 100, TAKING_ACCEPTANCE HOLDING_SET_POINT, charging at the border",
        // 130 - 100 = 30 A from the battery: 12.6 - 30 x 0.02 = 12.0 V.
        "14.4, 100, 130, 12.0,  30, 100, GIVING AT_LIMIT,                     battery helps",
        // 20 A from the battery: 12.6 - 20 x 0.02 = 12.2 V, above the set point of 12.0 V.
        "12.0, 100,  20, 12.2,  20,   0, GIVING STANDING_BY,                  set point below the battery",
        // 12.0 V = 12.6 - 30 x 0.02: the battery gives 30 A, the alternator 50 - 30 = 20 A.
        "12.0, 100,  50, 12.0,  30,  20, GIVING HOLDING_SET_POINT,            both give below rest",
        // 12.0 V asks 160 - 30 = 130 A of the alternator; it gives 100, the battery 60: 12.6 - 60 x 0.02 = 11.4 V.
        "12.0, 100, 160, 11.4,  60, 100, GIVING AT_LIMIT,                     both give and sag",
        // Nothing drawn and a set point below rest: 12.6 V, no current.
        "12.0, 100,   0, 12.6,   0,   0, AT_REST_VOLTS STANDING_BY,           nothing drawn",
        // No limit: 500 + 20 = 520 A at 14.4 V.
        "14.4, Infinity, 500, 14.4, -20, 520, TAKING_ACCEPTANCE HOLDING_SET_POINT, no limit",
        // Set point = rest volts: at 12.6 V the battery may take all it accepts, 30 + 20 = 50 A.
        "12.6, 100,  30, 12.6, -20,  50, TAKING_ACCEPTANCE HOLDING_SET_POINT, set point at rest volts"
    })
    void batteryAndAlternator(double setVolts, double limitAmperes, double loadAmperes, double volts,
            double batteryAmperes, double alternatorAmperes, String conditions, String title) {
        OperatingPoint point = solved(new Network.Builder("minus")
                .battery("battery", "plus", "minus", 12.6, 0.02, 20)
                .regulated("alternator", "plus", "minus", setVolts, limitAmperes)
                .constantCurrent("load", "plus", "minus", loadAmperes, 0));

        assertEquals(volts, point.voltsAt("plus"), CLOSE);
        assertEquals(batteryAmperes, point.sourceAmperes("battery"), CLOSE);
        assertEquals(alternatorAmperes, point.sourceAmperes("alternator"), CLOSE);
        assertEquals(conditions, point.condition("battery") + " " + point.condition("alternator"));
    }

    @Test
    void aBatteryAboveRestTakesItsAcceptanceWhateverTheVolts() {
        // 13.0 V and 14.8 V on 12.6 V: (set point - rest) / R would be 20 A and 110 A; it is 8 A both times.
        for (double setVolts : new double[] {13.0, 14.8}) {
            OperatingPoint point = solved(new Network.Builder("minus")
                    .battery("battery", "plus", "minus", 12.6, 0.02, 8)
                    .regulated("alternator", "plus", "minus", setVolts, 100));
            assertEquals(-8, point.sourceAmperes("battery"), CLOSE);
        }
    }

    @Test
    void aBatteryIsHeldAboveRestByAResistorAlone() {
        // 50 A at the limit, 20 A into the battery: 30 A x 0.45 ohm = 13.5 V, between 12.6 V and 14.4 V.
        OperatingPoint point = solved(new Network.Builder("minus")
                .battery("battery", "plus", "minus", 12.6, 0.02, 20)
                .regulated("alternator", "plus", "minus", 14.4, 50)
                .resistive("heater", "plus", "minus", 0.45, 0));

        assertEquals(13.5, point.voltsAt("plus"), CLOSE);
        assertEquals(Condition.TAKING_ACCEPTANCE, point.condition("battery"));
        assertEquals(Condition.AT_LIMIT, point.condition("alternator"));
    }

    @Test
    void theHigherOfTwoConsistentPointsIsTaken() {
        // 14 V, limit 50 A, 0.01 ohm, 650 W. At the set point I = (14 - sqrt(14^2 - 4 x 0.01 x 650)) / 0.02 = 48.08 A.
        // At the limit the load would have 650 / 50 = 13 V and the source 13.5 V: consistent too, but lower.
        OperatingPoint point = solved(new Network.Builder("minus")
                .regulated("source", "plus", "minus", 14, 50)
                .branch("wire", "plus", "far", 0.01)
                .constantPower("load", "far", "minus", 650, 0));

        assertEquals(Condition.HOLDING_SET_POINT, point.condition("source"));
        assertEquals((14 - Math.sqrt(170)) / 0.02, point.sourceAmperes("source"), CLOSE);
    }

    @Test
    void fourSourcesShareALoad() {
        // At 12.0 V: (12.6 - 12) / 0.02 = 30 A, (12.4 - 12) / 0.04 = 10 A, the converter's limit of 15 A, and the
        // alternator, which holds 12.0 V, the rest of 100 A: 45 A.
        OperatingPoint point = solved(new Network.Builder("minus")
                .battery("start", "plus", "minus", 12.6, 0.02, 20)
                .battery("second", "plus", "minus", 12.4, 0.04, 20)
                .regulated("alternator", "plus", "minus", 12.0, 90)
                .regulated("converter", "plus", "minus", 14.0, 15)
                .constantCurrent("load", "plus", "minus", 100, 0));

        assertEquals(30, point.sourceAmperes("start"), CLOSE);
        assertEquals(10, point.sourceAmperes("second"), CLOSE);
        assertEquals(45, point.sourceAmperes("alternator"), CLOSE);
        assertEquals(15, point.sourceAmperes("converter"), CLOSE);
    }

    @Test
    void twoBatteriesInSeriesAddUp() {
        // (12.6 + 12.4) V over 0.02 + 0.03 + 2.45 ohm = 10 A; across the load 24.5 V, in the middle 12.4 - 0.3 V.
        OperatingPoint point = solved(new Network.Builder("minus")
                .battery("lower", "middle", "minus", 12.4, 0.03, 20)
                .battery("upper", "plus", "middle", 12.6, 0.02, 20)
                .resistive("load", "plus", "minus", 2.45, 0));

        assertEquals(24.5, point.loadVolts("load"), CLOSE);
        assertEquals(12.1, point.voltsAt("middle"), CLOSE);
        assertEquals(10, point.sourceAmperes("upper"), CLOSE);
    }

    @Test
    void aLimitWithoutABatteryCarriesNoHeldCurrentAboveIt() {
        Solution solution = Solver.solve(new Network.Builder("minus")
                .regulated("source", "plus", "minus", 14, 50)
                .constantCurrent("load", "plus", "minus", 60, 0)
                .build());

        assertEquals(List.of("load"), assertInstanceOf(NoSolution.class, solution).loadIds());
    }

    private static OperatingPoint solved(Network.Builder network) {
        return assertInstanceOf(OperatingPoint.class, Solver.solve(network.build()));
    }
}
