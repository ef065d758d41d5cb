package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Networks worked out by hand, islands, loads out of reach, and input that is refused. */
class SolverTest {
    private static final double CLOSE = 1e-9;

    @Test
    void parallelBranchesShareACurrentAndReturnsRaiseTheGround() {
        // 0.02 and 0.06 ohm in parallel: 0.015 ohm; with the return of 0.025 ohm and 0.01 ohm inside 0.05 ohm.
        // 20 A: 12 - 20 x 0.05 = 11 V across the load, its negative terminal at 0.5 V, branches 15 A and 5 A.
        OperatingPoint point = solved(onBattery(12, 0.01)
                .branch("thick", "plus", "far", 0.02)
                .branch("thin", "far", "plus", 0.06)
                .branch("return", "ground", "minus", 0.025)
                .constantCurrent("load", "far", "ground", 20, 0));

        assertEquals(11, point.loadVolts("load"), CLOSE);
        assertEquals(11.5, point.voltsAt("far"), CLOSE);
        assertEquals(0.5, point.voltsAcross("ground", "minus"), CLOSE);
        assertEquals(15, point.branchAmperes("thick"), CLOSE);
        assertEquals(-5, point.branchAmperes("thin"), CLOSE);
        assertEquals(20, point.branchAmperes("return"), CLOSE);
        assertEquals(20, point.loadAmperes("load"), CLOSE);
    }

    @Test
    void aBridgeOfBranchesIsSolved() {
        // A bridge a-(1)-c-(2)-b, a-(2)-d-(1)-b with 1 ohm from c to d, 7 A from a to b. By symmetry a-c and d-b carry
        // x, c-b and a-d carry 7 - x, c-d carries 2 x - 7. Around a-c-d: x + (2 x - 7) = 2 (7 - x), so x = 4.2 A:
        // c-d 1.4 A, a to b 4.2 x 1 + 2.8 x 2 = 9.8 V.
        OperatingPoint point = solved(onBattery(100, 1)
                .branch("ac", "plus", "c", 1).branch("cb", "c", "b", 2)
                .branch("ad", "plus", "d", 2).branch("db", "d", "b", 1)
                .branch("cd", "c", "d", 1)
                .constantCurrent("load", "b", "minus", 7, 0));

        assertEquals(4.2, point.branchAmperes("ac"), CLOSE);
        assertEquals(2.8, point.branchAmperes("ad"), CLOSE);
        assertEquals(1.4, point.branchAmperes("cd"), CLOSE);
        assertEquals(9.8, point.voltsAcross("plus", "b"), CLOSE);
    }

    @Test
    void aLoadOfHeldPowerTakesTheHigherOfItsTwoVolts() {
        // 12 V, 0.1 ohm, 110 W: V^2 - 12 V + 11 = 0: 11 V and 1 V. At 11 V it draws 10 A.
        OperatingPoint point = solved(onBattery(12, 0.1).constantPower("load", "plus", "minus", 110, 0));

        assertEquals(11, point.loadVolts("load"), CLOSE);
        assertEquals(10, point.loadAmperes("load"), CLOSE);
    }

    @Test
    void aLoadBelowItsCutOffIsReportedAndGoesOnDrawing() {
        OperatingPoint point = solved(onBattery(12, 0.1)
                .constantPower("above", "plus", "minus", 55, 10.99)
                .constantPower("below", "plus", "minus", 55, 11.01));

        assertEquals(List.of("below"), point.belowCutOff());
        assertEquals(11, point.loadVolts("below"), CLOSE);
        assertEquals(5, point.loadAmperes("below"), CLOSE);
    }

    @Test
    void moreThanTheMostPowerHasNoSolutionAndNamesTheLoadsOfItsIsland() {
        // The most that 12 V behind 0.1 ohm can give is 12^2 / (4 x 0.1) = 360 W.
        NoSolution none = assertInstanceOf(NoSolution.class, Solver.solve(onBattery(12, 0.1)
                .constantPower("b", "plus", "minus", 200, 0)
                .constantPower("a", "plus", "minus", 161, 0)
                .constantPower("loose", "nowhere", "minus", 10, 0)
                .battery("other", "plus-2", "minus-2", 12, 0.1, 0)
                .constantPower("fine", "plus-2", "minus-2", 10, 0)
                .build()));

        assertEquals(List.of("a", "b"), none.loadIds());
        assertTrue(none.reason().contains("more than the sources can bring"), none.reason());
    }

    @Test
    void aReversedLoadIsNamed() {
        NoSolution none = assertInstanceOf(NoSolution.class, Solver.solve(onBattery(12, 0.1)
                .constantPower("right", "plus", "minus", 10, 0)
                .constantPower("wrong", "minus", "plus", 10, 0)
                .build()));

        assertEquals(List.of("wrong"), none.loadIds());
        assertTrue(none.reason().contains("not above"), none.reason());
    }

    @Test
    void whatNothingFeedsDrawsNothingAndDisturbsNothing() {
        // Only "load" closes a circuit: 12 V - 10 A x 0.1 ohm = 11 V.
        OperatingPoint point = solved(onBattery(12, 0.1)
                .constantPower("load", "plus", "minus", 110, 0)
                .constantPower("no-feed", "stub", "minus", 50, 9)
                .constantPower("no-ground", "plus", "loose-1", 50, 0)
                .constantCurrent("shared-loose-ground-a", "plus", "loose-2", 5, 0)
                .constantCurrent("shared-loose-ground-b", "plus", "loose-2", 5, 0)
                .branch("dead", "stub", "stub-2", 0.01));

        assertEquals(11, point.loadVolts("load"), CLOSE);
        assertEquals(List.of("no-feed", "no-ground", "shared-loose-ground-a", "shared-loose-ground-b"), point.unfed());
        assertEquals(List.of("no-feed"), point.belowCutOff());
        assertEquals(0, point.loadAmperes("no-ground"));
        assertEquals(0, point.loadVolts("no-ground"));
        assertEquals(0, point.branchAmperes("dead"));
        assertEquals(0, point.voltsAcross("stub", "stub-2"));
        assertFalse(point.joined("stub", "minus"));
        assertThrows(IllegalArgumentException.class, () -> point.voltsAt("stub"));
    }

    @Test
    void anIslandWithItsOwnSourceHasItsOwnVolts() {
        // An isolated converter: 5 V held, 2 A x 0.5 ohm lost on the way.
        OperatingPoint point = solved(onBattery(12, 0.1)
                .regulated("converter", "five", "zero", 5, 3)
                .branch("lead", "five", "device", 0.5)
                .constantCurrent("device", "device", "zero", 2, 0));

        assertEquals(4, point.loadVolts("device"), CLOSE);
        assertEquals(4, point.voltsAcross("device", "zero"), CLOSE);
        assertEquals(2, point.sourceAmperes("converter"), CLOSE);
        assertEquals(12, point.voltsAt("plus"), CLOSE);
        assertFalse(point.joined("five", "plus"));
    }

    @Test
    void resistancesMayDifferByTenPowers() {
        // 100 A through 1 micro-ohm: 1e-4 V. A sensor of 12 kilo-ohm behind 100 ohm: 12.1 V / 12.1 kilo-ohm = 1 mA.
        OperatingPoint point = solved(new Network.Builder("minus")
                .regulated("source", "plus", "minus", 12.1, 200)
                .branch("bar", "plus", "bar-end", 1e-6)
                .constantCurrent("load", "bar-end", "minus", 100, 0)
                .branch("sensor-lead", "plus", "sensor", 100)
                .resistive("sensor", "sensor", "minus", 12_000, 0));

        assertEquals(1e-4, point.voltsAcross("plus", "bar-end"), 1e-15);
        assertEquals(100, point.branchAmperes("bar"), 1e-8);
        assertEquals(1e-3, point.branchAmperes("sensor-lead"), 1e-14);
    }

    @Test
    void otherValuesAtTheSameTerminals() {
        Network loud = onBattery(12, 0.1).constantPower("amp", "plus", "minus", 110, 0)
                .constantCurrent("radio", "plus", "minus", 0, 0).build();

        // 12 V, 0.1 ohm, 20 W: V^2 - 12 V + 2 = 0, V = 6 + sqrt(34). Rest volts of 11 V: V = 5.5 + sqrt(28.25).
        Network quiet = loud.withLoads(List.of(new Load.ConstantPower("amp", "plus", "minus", 20, 0)));
        Network low = quiet.withSources(List.of(new Source.Battery("battery", "plus", "minus", 11, 0.1, 0)));

        assertEquals(11, solved(loud).loadVolts("amp"), CLOSE);
        assertEquals(6 + Math.sqrt(34), solved(quiet).loadVolts("amp"), CLOSE);
        assertEquals(5.5 + Math.sqrt(28.25), solved(low).loadVolts("amp"), CLOSE);
        assertEquals(List.of("amp", "radio"), quiet.loads().stream().map(Load::id).toList());
        // 12 V over 0.1 ohm in the battery and 1.1 ohm: 10 A, 11 V. What reacts to its volts may do so by another law.
        assertEquals(11, solved(loud.withLoads(List.of(new Load.Resistive("amp", "plus", "minus", 1.1, 0)))).loadVolts("amp"), CLOSE);
        assertThrows(IllegalArgumentException.class,
                () -> loud.withLoads(List.of(new Load.ConstantCurrent("amp", "plus", "minus", 1, 0))));
        assertThrows(IllegalArgumentException.class,
                () -> loud.withLoads(List.of(new Load.Resistive("amp", "plus", "elsewhere", 1, 0))));
        assertThrows(IllegalArgumentException.class,
                () -> loud.withLoads(List.of(new Load.Resistive("other", "plus", "minus", 1, 0))));
        assertThrows(IllegalArgumentException.class,
                () -> loud.withSources(List.of(new Source.Battery("battery", "minus", "plus", 11, 0.1, 0))));
    }

    @Test
    void emptyNetworks() {
        OperatingPoint nothing = solved(new Network.Builder("minus"));
        assertEquals(0, nothing.voltsAt("minus"));
        OperatingPoint dead = solved(new Network.Builder("minus").resistive("lamp", "plus", "minus", 2, 0));
        assertEquals(List.of("lamp"), dead.unfed());
    }

    static Stream<Arguments> refusals() {
        return Stream.of(
                row("branch wire: ohms", b -> b.branch("wire", "a", "b", 0)),
                row("branch wire: ohms", b -> b.branch("wire", "a", "b", -1)),
                row("branch wire: ohms", b -> b.branch("wire", "a", "b", Double.NaN)),
                row("branch wire: ohms", b -> b.branch("wire", "a", "b", Double.POSITIVE_INFINITY)),
                row("branch wire: both ends", b -> b.branch("wire", "a", "a", 1)),
                row("branch wire: an id and two nodes", b -> b.branch("wire", "", "a", 1)),
                row("branch have the id wire", b -> b.branch("wire", "a", "b", 1).branch("wire", "b", "c", 1)),
                row("source have the id s",
                        b -> b.battery("s", "a", "b", 12, 1, 1).regulated("s", "a", "b", 12, 1)),
                row("load have the id l", b -> b.resistive("l", "a", "b", 1, 0).constantPower("l", "a", "b", 1, 0)),
                row("battery s: rest volts", b -> b.battery("s", "a", "b", 0, 1, 1)),
                row("battery s: internal ohms", b -> b.battery("s", "a", "b", 12, 0, 1)),
                row("battery s: acceptance amperes", b -> b.battery("s", "a", "b", 12, 1, -1)),
                row("source s: set volts", b -> b.regulated("s", "a", "b", Double.NaN, 1)),
                row("source s: limit amperes", b -> b.regulated("s", "a", "b", 14, Double.NaN)),
                row("source s: limit amperes", b -> b.regulated("s", "a", "b", 14, 0)),
                row("load l: watts", b -> b.constantPower("l", "a", "b", -1, 0)),
                row("load l: amperes", b -> b.constantCurrent("l", "a", "b", Double.NaN, 0)),
                row("load l: ohms", b -> b.resistive("l", "a", "b", 0, 0)),
                row("load l: cut-off volts", b -> b.resistive("l", "a", "b", 1, -1)),
                row("load l: both ends", b -> b.resistive("l", "a", "a", 1, 0)));
    }

    private static Arguments row(String message, Consumer<Network.Builder> call) {
        return Arguments.of(message, call);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void refused(String message, Consumer<Network.Builder> call) {
        Network.Builder builder = new Network.Builder("a");
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> call.accept(builder));
        assertTrue(refusal.getMessage().contains(message), refusal.getMessage());
    }

    @Test
    void unknownNamesAreRefused() {
        OperatingPoint point = solved(onBattery(12, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new Network.Builder(""));
        assertThrows(IllegalArgumentException.class, () -> point.voltsAt("nowhere"));
        assertThrows(IllegalArgumentException.class, () -> point.branchAmperes("none"));
        assertThrows(IllegalArgumentException.class, () -> point.sourceAmperes("none"));
        assertThrows(IllegalArgumentException.class, () -> point.loadVolts("none"));
    }

    private static Network.Builder onBattery(double restVolts, double internalOhms) {
        return new Network.Builder("minus").battery("battery", "plus", "minus", restVolts, internalOhms, 0);
    }

    private static OperatingPoint solved(Network.Builder network) {
        return solved(network.build());
    }

    private static OperatingPoint solved(Network network) {
        return assertInstanceOf(OperatingPoint.class, Solver.solve(network));
    }
}
