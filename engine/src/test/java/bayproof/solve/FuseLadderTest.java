package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bayproof.read.SharedTables;
import java.util.List;
import org.junit.jupiter.api.Test;

class FuseLadderTest {
    private final FuseLadder small = new FuseLadder(List.of(30.0, 10.0, 20.0, 10.0));

    @Test
    void theNearestComesFirst() {
        assertEquals(List.of(20.0, 10.0), small.below(30));
        assertEquals(List.of(20.0, 30.0), small.above(10));
    }

    @Test
    void aCurrentBetweenRatingsHasBothSides() {
        assertEquals(List.of(10.0), small.below(12.5));
        assertEquals(List.of(20.0, 30.0), small.above(12.5));
    }

    @Test
    void beyondTheEndsThereIsNothing() {
        assertEquals(List.of(), small.below(10));
        assertEquals(List.of(), small.above(30));
    }

    @Test
    void theBuiltInLadderHasAllShapes() {
        assertEquals(List.of(1.0, 2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0, 70.0, 80.0, 100.0,
                125.0, 150.0, 175.0, 200.0, 225.0, 250.0, 300.0, 350.0, 400.0, 500.0), SharedTables.fuses().above(0));
    }
}
