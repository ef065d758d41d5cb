package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The check that stands behind every result must be able to fail. */
class KirchhoffTest {
    @Test
    void aResultThatIsNotOneIsAFaultOfOurs() {
        Network network = new Network.Builder("minus")
                .battery("battery", "plus", "minus", 12, 0.1, 0)
                .branch("wire", "plus", "far", 0.1)
                .constantCurrent("load", "far", "minus", 5, 0)
                .build();
        // 4.9 A given to a load that draws 5 A: 12 - 0.49 V at the post, but "far" is left with 0.1 A.
        assertTrue(fault(network, -4.9, 4.9, 12 - 0.49).contains("node far"));
        // The currents are right, but 5 A through 0.1 ohm leave 11.5 V, not 11.6 V.
        assertTrue(fault(network, -5, 5, 11.6).contains("source battery has 11.6 V"));
    }

    private static String fault(Network network, double batteryTaken, double loadTaken, double postVolts) {
        OperatingPoint.Values values = new OperatingPoint.Values(network);
        // Two pieces: the feed side with its root "far", 0.1 ohm from the post, and the ground.
        values.put(network.wiring().islands().get(0), new IslandSolver.Settled(new Condition[] {Condition.GIVING},
                new double[] {batteryTaken, loadTaken}, new double[] {postVolts - 0.1 * loadTaken, 0}));
        return assertThrows(IllegalStateException.class,
                () -> Kirchhoff.check(network, new OperatingPoint(network, values))).getMessage();
    }
}
