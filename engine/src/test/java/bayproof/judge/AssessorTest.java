package bayproof.judge;

import static bayproof.judge.Demands.assess;
import static bayproof.judge.Demands.atLeast;
import static bayproof.judge.Demands.atMost;
import static bayproof.judge.Demands.between;
import static bayproof.judge.Demands.demand;
import static bayproof.judge.Demands.need;
import static bayproof.judge.Demands.number;
import static bayproof.judge.Demands.outcome;
import static bayproof.judge.Demands.statement;
import static bayproof.judge.Demands.window;
import static bayproof.judge.Demands.words;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.demand.Bound;
import bayproof.demand.Demand;
import bayproof.demand.Limit;
import bayproof.demand.Weight;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From a demand to its outcome, against tables written by hand. */
class AssessorTest {
    // parts and conditions

    @ParameterizedTest
    @CsvSource({"true, true, holds", "true, false, broken", "true, unknown, unshown", "false, true, broken", "false, false, broken",
        "false, unknown, broken", "unknown, true, unshown", "unknown, false, broken", "unknown, unknown, unshown"})
    void partsAreJoinedByAnd(String one, String other, String expected) {
        assertEquals(expected, outcome(demand().isTrue("one", statement(one)).isTrue("other", statement(other))));
    }

    @ParameterizedTest
    @CsvSource({"true, true, holds", "true, false, broken", "true, unknown, unshown", "false, true, not-applicable",
        "false, false, not-applicable", "false, unknown, not-applicable", "unknown, true, holds", "unknown, false, unshown",
        "unknown, unknown, unshown", "hidden, true, holds", "hidden, false, unshown"})
    void whatLiesOutsideADemandDoesNotApply(String condition, String demanded, String expected) {
        assertEquals(expected, outcome(demand().when(statement(condition), "it lies outside").isTrue("what is asked", statement(demanded))));
    }

    @ParameterizedTest
    @CsvSource({"true, true, broken", "true, unknown, unshown", "unknown, false, not-applicable", "false, unknown, not-applicable"})
    void eachConditionCanPutItOutside(String one, String other, String expected) {
        assertEquals(expected, outcome(demand().when(statement(one), "one").when(statement(other), "other").isTrue("what is asked", statement("false"))));
    }

    @Test
    void whatIsAskedForIsTheConditionAndWhatTheDemandWaitsFor() {
        Demand demand = demand().when(Shown.missing(need("a")), "outside").isTrue("one", Shown.missing(need("b"))).isTrue("other", Shown.missing(need("c")));
        assertEquals(List.of("a", "b", "c"), ((Verdict) assess(demand)).needs().stream().map(Need::path).toList());
    }

    // numbers

    @ParameterizedTest
    @CsvSource({"9, holds", "10, holds", "10.0001, broken", "unknown, unshown", "hidden, unshown", "collapsed, broken",
        "9..8, holds", "12..11, broken", "12..9, unshown", "none..9, unshown", "none..12, broken"})
    void aNumberIsHeldAgainstAMost(String value, String expected) {
        assertEquals(expected, outcome(demand().number("the length", number(value)).isAtMost("most"), atMost("most", new Limit.Step(null, 10)), window("rest")));
    }

    @ParameterizedTest
    @CsvSource({"10.0001, holds", "10, holds", "9.9, broken", "unknown, unshown", "collapsed, broken", "11..12, holds", "8..9, broken", "9..11, unshown"})
    void aNumberIsHeldAgainstALeast(String value, String expected) {
        assertEquals(expected, outcome(demand().number("the length", number(value)).isAtLeast("least"), atLeast("least", 10), window("rest")));
    }

    @ParameterizedTest
    @CsvSource({"2, holds", "4, holds", "3, holds", "1.9, broken", "4.1, broken", "unknown, unshown", "1..3, unshown"})
    void aNumberLiesBetweenTwo(String value, String expected) {
        assertEquals(expected, outcome(demand().number("the length", number(value)).isBetween(new Bound.Named("range")), between("range", 2, 4), window("rest")));
    }

    @ParameterizedTest
    @CsvSource({"0.1, holds, STOP", "0.178, holds, STOP", "0.2, broken, FIX", "0.457, broken, FIX", "0.5, broken, STOP", "unknown, unshown, STOP",
        "collapsed, broken, STOP", "0.5..0.2, broken, STOP", "0.2..0.1, unshown, STOP"})
    void aGradedLimitWeighsWhatIsCrossed(String value, String expected, Weight weight) {
        Verdict verdict = (Verdict) assess(demand().number("the length", number(value)).isAtMost("graded"),
                atMost("graded", new Limit.Step(Weight.FIX, 0.178), new Limit.Step(Weight.STOP, 0.457)), window("rest"));
        assertEquals(expected, verdict.outcome().word());
        assertEquals(weight, verdict.weight());
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0.178, 0.457", "0.1, 0.178, 0.457", "0.5, 0.178, NaN"})
    void theNextHeavierFigureIsNamed(String value, double limit, double next) {
        Verdict verdict = (Verdict) assess(demand().number("the length", number(value)).isAtMost("graded"),
                atMost("graded", new Limit.Step(Weight.FIX, 0.178), new Limit.Step(Weight.STOP, 0.457)));
        assertEquals(limit, verdict.limit().value());
        assertEquals(next, verdict.limit().next());
    }

    @Test
    void aCollapsedItemHasNoMeasuredValue() {
        Verdict verdict = (Verdict) assess(demand().number("the drop", number("collapsed")).isAtMost("most"), atMost("most", new Limit.Step(null, 10)));
        assertNull(verdict.measured());
        assertEquals("no working state", verdict.because());
    }

    @ParameterizedTest
    @CsvSource({"collapsed, broken", "hidden, unshown", "unknown, unshown"})
    void aStatementWithoutAnAnswerNeverHolds(String value, String expected) {
        assertEquals(expected, outcome(demand().isTrue("what is asked", statement(value))));
        assertEquals(expected, outcome(demand().isPresent("what is asked", statement(value))));
        assertEquals(expected, outcome(demand().word("what is asked", statement(value).map(yes -> "steel")).fits("list"), words("list", Limit.Kind.ONE_OF, "steel")));
    }

    @Test
    void whatCannotBeSeenBreaksWhereTheRuleSaysSo() {
        assertEquals("broken", outcome(demand().brokenIfHidden().isTrue("what is asked", statement("hidden"))));
        assertEquals("broken", outcome(demand().brokenIfHidden().number("the length", number("hidden")).isAtMost("most"), atMost("most", new Limit.Step(null, 10))));
        assertEquals("unshown", outcome(demand().brokenIfHidden().isTrue("what is asked", statement("unknown"))));
    }

    // windows

    @Test
    void theWindowThatMovesTheValueMostIsAskedForFirst() {
        Window small = new Window("a", "rest", 1, 2, 0.1);
        Window large = new Window("b", "rest", 1, 2, 0.9);
        Window none = new Window("c", "rest", 1, 2, 0);
        assertEquals(List.of("b", "a"), asked(List.of(large, small, none)));
        assertEquals(List.of("c", "c"), asked(List.of(none, none)), "where none moves it alone, all are asked for");
    }

    private static List<String> asked(List<Window> ranked) {
        Shown<Double> value = new Shown.Assumed<>(12.0, 9.0, Windows.unweighed(ranked), () -> "");
        Verdict verdict = (Verdict) assess(demand().number("the length", value).isAtMost("most"), atMost("most", new Limit.Step(null, 10)), window("rest"));
        assertEquals("unshown", verdict.outcome().word());
        return verdict.needs().stream().map(Need::path).toList();
    }

    @Test
    void aVerdictSaysWhatItAssumes() {
        Verdict verdict = (Verdict) assess(demand().number("the length", number("9..8")).isAtMost("most"), atMost("most", new Limit.Step(null, 10)), window("rest"));
        assertEquals(List.of("items.thing.rest"), verdict.windows().stream().map(Window::path).toList());
        assertEquals(9, verdict.measured().number());
        assertEquals(0.1, verdict.marginFraction(), 1e-12);
    }

    // choices

    @ParameterizedTest
    @CsvSource({"true, 50, holds", "true, 500, holds", "true, 2000, broken", "false, 50, holds", "false, 500, broken", "false, 2000, broken",
        "unknown, 50, holds", "unknown, 500, unshown", "unknown, 2000, broken", "unknown, unknown, unshown", "hidden, 500, unshown"})
    void aLimitChosenByAFact(String fact, String value, String expected) {
        Demand demand = demand().number("the length", number(value)).isAtMost(new Bound.Chosen(statement(fact), "wide", "narrow"));
        assertEquals(expected, outcome(demand, atMost("wide", new Limit.Step(null, 1000)), atMost("narrow", new Limit.Step(null, 100))));
    }

    @Test
    void theFactThatChoosesIsAskedForAndTheHeaviestWeightCounts() {
        Demand demand = demand().number("the length", number("500")).isAtMost(new Bound.Chosen(statement("unknown"), "wide", "narrow"));
        Verdict verdict = (Verdict) assess(demand, atMost("wide", new Limit.Step(Weight.STOP, 1000)),
                atMost("narrow", new Limit.Step(Weight.ADVISE, 100), new Limit.Step(Weight.FIX, 600)));
        assertEquals(List.of("items.thing.fact"), verdict.needs().stream().map(Need::path).toList());
        assertEquals(Weight.STOP, verdict.weight());
    }

    @ParameterizedTest
    @CsvSource({"narrow, 500, broken", "wide, 500, holds", "unknown, 500, unshown"})
    void aLimitNamedByAFact(String name, String value, String expected) {
        Shown<String> named = name.equals("unknown") ? Shown.missing(need("which")) : Shown.of(name);
        assertEquals(expected, outcome(demand().number("the length", number(value)).isAtMost(new Bound.NamedBy(named)),
                atMost("wide", new Limit.Step(null, 1000)), atMost("narrow", new Limit.Step(null, 100))));
    }

    @ParameterizedTest
    @CsvSource({"2, 4, holds", "2, 2, holds", "2, 1.99, broken", "unknown, 4, unshown", "2, unknown, unshown"})
    void aFigureOfTheEquipmentItself(String least, String value, String expected) {
        assertEquals(expected, outcome(demand().number("the load", number(value)).isAtLeast(new Bound.Own(number(least), "ohm", "least rated load"))));
    }

    // words and people

    @ParameterizedTest
    @CsvSource({"ONE_OF, grommet, holds", "ONE_OF, tape, broken", "NONE_OF, grommet, broken", "NONE_OF, tape, holds"})
    void aWordIsInAListOrNot(Limit.Kind kind, String word, String expected) {
        assertEquals(expected, outcome(demand().word("the guard", Shown.of(word)).fits("list"), words("list", kind, "grommet", "bushing")));
    }

    @Test
    void somebodyVouchesOrNobody() {
        assertEquals("holds", outcome(demand().isAttested("the proof", Shown.of(new Attestation("senior", "2026-11-20", "meter")))));
        assertEquals("unshown", outcome(demand().isAttested("the proof", Shown.missing(need("who")))));
    }

    // faults of ours

    private static String fault(Demand demand, Limit... limits) {
        return assertThrows(RuleFault.class, () -> assess(demand, limits)).getMessage();
    }

    @Test
    void aFaultNamesTheFileOfItsRule() {
        Demand unfinished = demand().isTrue("one", statement("true"));
        unfinished.number("the length", number("1"));
        for (String message : List.of(fault(demand()), fault(unfinished),
                fault(demand().number("the length", number("NaN")).isAtMost("most"), atMost("most", new Limit.Step(null, 10))),
                fault(demand().number("the length", number("NaN..1")).isAtMost("most"), atMost("most", new Limit.Step(null, 10)), window("rest")),
                fault(demand().number("the length", number("1")).isAtMost("least"), atLeast("least", 10)),
                fault(demand().word("the guard", Shown.of("steel")).fits("list"), words("list", Limit.Kind.WORDS, "steel")),
                fault(demand().isTrue("a window", new Shown.Assumed<>(true, true, Windows.unweighed(List.of()), () -> ""))))) {
            assertTrue(message.startsWith("the rule in rules/tests/trial.drl "), message);
        }
    }

    @Test
    void aSubjectMayWeighLessThanItsRuleAndNeverMore() {
        assertEquals(Weight.FIX, ((Verdict) assess(demand().weighing(Weight.FIX).isTrue("one", statement("false")))).weight());
        RuleInfo light = new RuleInfo("light", "tests", Weight.ADVISE, Demands.RULE.gate(), "thing");
        Demand demand = demand().weighing(Weight.STOP).isTrue("one", statement("true"));
        assertThrows(RuleFault.class, () -> new Assessor(light, demand, new bayproof.demand.Limits(java.util.Map.of())));
    }

    @Test
    void aPartIsFinishedBeforeTheNextBegins() {
        Demand demand = demand();
        demand.number("one", number("1"));
        assertThrows(IllegalStateException.class, () -> demand.word("other", Shown.of("a")));
    }
}
