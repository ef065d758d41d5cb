package bayproof.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.cases.Changed;
import bayproof.demand.Limits;
import bayproof.demand.Outcome;
import bayproof.facts.FactBook;
import bayproof.facts.Numbers;
import bayproof.support.Jobs;
import bayproof.vocabulary.ChargeSource;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SourceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is fixed for every rule when a job is judged. */
class CourtTest {
    private static final Limits LIMITS = Jobs.asWritten(Jobs.CLEAN.get(0)).job().limits();

    private static ChargeSource source(String subject, double amperes) {
        return new ChargeSource(subject, Demands.HERE, SourceKind.ALTERNATOR, Shown.of(amperes), Shown.of(0.0), Shown.of(0.0));
    }

    private static Judgment judge(Fact... facts) {
        return Court.judge(new FactBook(List.of(facts), new Numbers()), LIMITS);
    }

    @Test
    void oneRuleGivesOneVerdictOnASubject() {
        assertEquals(2, judge(source("a", 1), source("b", -1)).verdicts().stream()
                .filter(verdict -> verdict.rule().id().equals("charge-balance-idle")).count());
        String message = assertThrows(RuleFault.class, () -> judge(source("a", 1), source("a", -1))).getMessage();
        assertTrue(message.contains("rules/supply/") && message.contains("twice about a"), message);
    }

    @Test
    void noNumberIsAFaultOfOurs() {
        String message = assertThrows(RuleFault.class, () -> judge(source("a", Double.NaN))).getMessage();
        assertTrue(message.contains("charge-balance-idle.drl"), message);
    }

    @Test
    void aRuleThatNamesALimitThatIsNoneIsNamed() {
        FactBook facts = new FactBook(List.of(source("a", 1)), new Numbers());
        String message = assertThrows(RuleFault.class, () -> Court.judge(facts, new Limits(Map.of()))).getMessage();
        assertTrue(message.contains("charge-balance-idle.drl failed: no limit is named charge-balance"), message);
    }

    @Test
    void aRuleThatFindsNothingOfItsKindIsListedOnce() {
        Judgment empty = judge();
        assertEquals(List.of(), empty.verdicts());
        assertEquals(List.copyOf(RuleBase.built().rules().values()), empty.notApplicable().stream().map(Judgment.NotApplicable::rule).toList());
        empty.notApplicable().forEach(one -> assertTrue(one.subject() == null && one.reason().startsWith("no "), one.toString()));
    }

    @Test
    void verdictsAreSortedByWeightRuleAndSubject() {
        Changed.all().forEach(job -> {
            List<Verdict> verdicts = job.evaluation().judgment().verdicts();
            List<Verdict> sorted = new ArrayList<>(verdicts);
            sorted.sort((one, other) -> one.weight() != other.weight() ? other.weight().ordinal() - one.weight().ordinal()
                    : one.rule().id().equals(other.rule().id()) ? one.subject().compareTo(other.subject()) : one.rule().id().compareTo(other.rule().id()));
            assertEquals(sorted, verdicts, job.title());
        });
    }

    @Test
    void whatIsNotShownSaysWhatItWaitsFor() {
        assertEquals(List.of(), Changed.all().flatMap(job -> job.evaluation().judgment().of(Outcome.UNSHOWN).stream()
                .filter(verdict -> verdict.needs().isEmpty()).map(verdict -> job.title() + ": " + verdict.key())).toList());
    }
}
