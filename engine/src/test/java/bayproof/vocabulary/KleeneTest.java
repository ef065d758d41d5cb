package bayproof.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three-valued logic and values joined, against tables written by hand. */
class KleeneTest {
    private static final At HERE = new At("plan.yaml", 1, 1);

    private static Shown<Boolean> shown(String word) {
        return word.equals("unknown") ? Shown.missing(new Need("a.fact", "a fact", HERE)) : Shown.of(Boolean.valueOf(word));
    }

    private static String word(Shown<Boolean> shown) {
        return shown.isGiven() ? String.valueOf(shown.orElse(null)) : "unknown";
    }

    @ParameterizedTest
    @CsvSource({"true, true, true, true", "true, false, false, true", "true, unknown, unknown, true", "false, true, false, true",
        "false, false, false, false", "false, unknown, false, unknown", "unknown, true, unknown, true", "unknown, false, false, unknown",
        "unknown, unknown, unknown, unknown"})
    void twoStatementsAreJoined(String one, String other, String and, String or) {
        assertEquals(and, word(Kleene.and(shown(one), shown(other))));
        assertEquals(or, word(Kleene.or(shown(one), shown(other))));
    }

    @ParameterizedTest
    @CsvSource({"true, true, true", "true, false, false", "false, false, true", "unknown, true, false", "unknown, false, false"})
    void onlyWhatIsKnownIsAsSaid(String statement, boolean value, boolean expected) {
        assertEquals(expected, Kleene.is(shown(statement), value));
    }

    @Test
    void whatTwoMissingValuesWaitForIsNamedOnce() {
        Need first = new Need("runs.a.length", "its length", HERE);
        Need second = new Need("runs.b.length", "its length", HERE);
        Shown<Integer> one = Shown.missing(first);
        Shown<Integer> other = Shown.missing(second, first);
        assertEquals(List.of(first, second), one.with(other, Integer::sum).needs());
        assertEquals(List.of(first), one.with(Shown.of(2), Integer::sum).needs());
        assertEquals(5, Shown.of(2).with(Shown.of(3), Integer::sum).orElse(0));
    }

    @Test
    void whatCannotBeSeenStaysSo() {
        Need need = new Need("runs.a.cover", "its cover", HERE);
        Shown<Integer> hidden = new Shown.Hidden<>(need);
        assertInstanceOf(Shown.Hidden.class, hidden.map(value -> value + 1));
        assertInstanceOf(Shown.Hidden.class, hidden.with(Shown.of(1), Integer::sum));
        assertInstanceOf(Shown.Missing.class, hidden.with(Shown.missing(new Need("b", "b", HERE)), (Integer a, Integer b) -> a + b));
    }

    @Test
    void aCollapseStaysOneAndGivesWayToWhatIsMissing() {
        Shown<Integer> collapsed = new Shown.Collapsed<>("no working state");
        assertEquals(new Shown.Collapsed<Integer>("no working state"), collapsed.with(Shown.of(1), Integer::sum));
        assertEquals(new Shown.Collapsed<Integer>("no working state"), Shown.of(1).with(collapsed, Integer::sum));
        assertEquals(1, collapsed.with(Shown.missing(new Need("b", "b", HERE)), (Integer a, Integer b) -> a + b).needs().size());
    }

    @Test
    void aWindowIsWorkedThroughAtBothEndsAndChoosesNoPath() {
        Shown<Integer> window = new Shown.Assumed<>(10, 4, Windows.unweighed(List.of(new Window("a", "limit", 4, 10, 0))), () -> "10");
        Shown.Assumed<?> doubled = assertInstanceOf(Shown.Assumed.class, window.map(value -> value * 2));
        assertEquals(20, doubled.bad());
        assertEquals(8, doubled.good());
        assertThrows(IllegalStateException.class, () -> window.then(value -> Shown.of(value)));
    }

    @Test
    void aMissingValueSaysWhatWouldShowIt() {
        assertThrows(IllegalArgumentException.class, () -> Shown.missing(List.of()));
    }
}
