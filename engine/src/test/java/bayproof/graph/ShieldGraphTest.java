package bayproof.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Loops through shields, each drawn by hand first. */
class ShieldGraphTest {
    @Test
    void itemsThatOnlyHangOnTheGroundCloseNoLoop() {
        ShieldGraph graph = new ShieldGraph();
        graph.grounded("radio");
        graph.grounded("amplifier");
        assertEquals(Map.of(), graph.loops());
    }

    @Test
    void oneShieldBetweenTwoGroundedItemsClosesOne() {
        ShieldGraph graph = new ShieldGraph();
        graph.grounded("radio");
        graph.grounded("amplifier");
        graph.grounded("processor");
        graph.shield("left", "radio", "amplifier");
        assertEquals(Map.of("radio", List.of("amplifier", "left", "radio"), "amplifier", List.of("amplifier", "left", "radio")), graph.loops());
    }

    @Test
    void aShieldToAnItemWithoutGroundClosesNone() {
        ShieldGraph graph = new ShieldGraph();
        graph.grounded("amplifier");
        graph.shield("left", "player", "amplifier");
        assertEquals(Map.of(), graph.loops());
    }

    @Test
    void twoShieldsSideBySideCloseALoopWithoutAnyGround() {
        ShieldGraph graph = new ShieldGraph();
        graph.grounded("amplifier");
        graph.shield("left", "player", "amplifier");
        graph.shield("right", "player", "amplifier");
        assertEquals(Map.of("player", List.of("left", "right"), "amplifier", List.of("left", "right")), graph.loops());
    }

    @Test
    void aLoopOfThreePassesThroughAllItsItems() {
        ShieldGraph graph = new ShieldGraph();
        graph.grounded("radio");
        graph.grounded("amplifier");
        graph.shield("one", "radio", "processor");
        graph.shield("two", "processor", "amplifier");
        assertEquals(Set.of("radio", "processor", "amplifier"), graph.loops().keySet());
    }
}
