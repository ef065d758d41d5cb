package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.demand.Weight;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shop's own figures in place of the default limits. */
class LimitsReaderTest {
    private static Limits read(String shop) throws UnusableInput {
        Problems problems = new Problems();
        Limits limits = LimitsReader.withShop(Written.yaml("limits:\n  " + shop), problems);
        problems.throwIfAny();
        return limits;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "fuse-distance-bare: { at-most: { fix: 150 mm }, reason: ours } | false",
        "fuse-distance-bare: { at-most: { fix: 200 mm }, reason: ours } | true",
        "fuse-distance-bare: { at-most: { fix: 150 mm, stop: 500 mm }, reason: ours } | true",
        "fuse-distance-bare: { at-most: { stop: null }, reason: ours } | true",
        "fuse-distance-bare: { at-most: 100 mm, reason: ours } | true",
        "charge-balance: { at-least: { fix: 5 A }, reason: ours } | false",
        "edge-guards: { one-of: [ grommet ], reason: ours } | false",
        "edge-guards: { one-of: [ grommet, tape ], reason: ours } | true",
        "pin-ground-supply-off: { between: [ 0 ohm, 0.5 ohm ], reason: ours } | false",
        "pin-ground-supply-off: { between: [ 0 ohm, 2 ohm ], reason: ours } | true",
        "joint-resistance: { window: [ 0.05 mohm, 1 mohm ], reason: ours } | false",
        "joint-resistance: { window: [ 0.1 mohm, 0.2 mohm ], reason: ours } | true",
        "fuse-guards-conductor: { value: 150 %, reason: ours } | true",
        "sheaths: { words: [ closed-tube, split-tube ], reason: ours } | true"})
    void whatAsksForLessIsLooser(String shop, boolean looser) throws UnusableInput {
        Limit limit = read(shop).named(shop.substring(0, shop.indexOf(':')));
        assertEquals(looser, limit.changed().looser());
        assertEquals("ours", limit.changed().reason());
    }

    @Test
    void theChangedLimitKeepsItsSourceAndSaysWhatItWas() throws UnusableInput {
        Limit limit = read("fuse-distance-bare: { at-most: { stop: 300 mm, fix: 150 mm }, reason: ours }").named("fuse-distance-bare");
        assertEquals(List.of(new Limit.Step(Weight.FIX, 0.15), new Limit.Step(Weight.STOP, 0.3)), limit.steps());
        assertEquals("fix 178 mm, stop 457 mm", limit.changed().was());
        assertTrue(limit.source().startsWith("33 CFR 183.455"), limit.source());
    }

    @Test
    void theOthersStayAsTheyAre() throws UnusableInput {
        Limits limits = read("charge-balance: { at-least: { fix: 5 A }, reason: ours }");
        assertEquals(0.457, limits.named("fuse-distance-bare").steps().get(1).value());
        assertNull(limits.named("fuse-distance-bare").changed());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "charge-balance: { at-least: { fix: 5 A } } | needs a reason",
        "charge-balance: { at-least: { fix: 5 A }, reason: } | needs a reason",
        "charge-balance: 5 A | needs a reason",
        "charge-balans: { at-least: { fix: 5 A }, reason: ours } | Did you mean charge-balance?",
        "charge-balance: { at-most: { fix: 5 A }, reason: ours } | not a limit of this kind",
        "charge-balance: { at-least: { fix: 5 V }, reason: ours } | is a figure in A, not in V",
        "charge-balance: { at-least: { fix: 5 }, reason: ours } | has no unit",
        "charge-balance: { at-least: { fixed: 5 A }, reason: ours } | \"fixed\" is not a weight. Did you mean fix?",
        "charge-balance: { at-least: { fix: 5 A }, reasons: ours, reason: ours } | is not a key of a limit",
        "joint-resistance: { window: [ 2 mohm, 1 mohm ], reason: ours } | the lower end comes first",
        "joint-resistance: { window: [ 1 mohm ], reason: ours } | two figures are needed",
        "joint-resistance: { window: [ 1 mohm, 2 V ], reason: ours } | of another kind than the figure before it",
        "drop-reference: { value: { fix: 12 V }, reason: ours } | a figure with its unit is needed",
        "edge-guards: { one-of: grommet, reason: ours } | a list of words is needed"})
    void whatCannotBeMeantIsRefusedWithItsPlace(String shop, String says) {
        UnusableInput refused = assertThrows(UnusableInput.class, () -> read(shop));
        assertTrue(refused.getMessage().contains(says), refused.getMessage());
        refused.problems().forEach(problem -> assertEquals(2, problem.at().line(), problem.toString()));
    }
}
