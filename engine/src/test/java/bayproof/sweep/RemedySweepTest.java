package bayproof.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.cases.Changed;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.review.Remedies;
import bayproof.review.Remedy;
import bayproof.support.Tally;
import bayproof.vocabulary.Knob;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.LongAdder;
import org.junit.jupiter.api.Test;

/**
 * What is said to put a broken rule right does so: with it the rule holds and nothing else gets worse, and a value one
 * step nearer to the planned one does not do.
 */
class RemedySweepTest {
    private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
    private final LongAdder tried = new LongAdder();

    @Test
    void eachRemedyIsTheNearestThatWorks() {
        Changed.all().forEach(one -> Remedies.of(one.evaluation()).forEach((key, remedy) -> {
            if (remedy.knob() != null) {
                tried.increment();
                check(one.title(), one.evaluation(), key, remedy);
            }
        }));
        assertTrue(tried.sum() > 0);
        Tally.count("sweep mutations", tried.sum());
        assertEquals(List.of(), wrong.stream().sorted().toList());
    }

    private void check(String title, Evaluation planned, String key, Remedy remedy) {
        Knob knob = remedy.knob();
        Evaluation mended = with(planned, knob, remedy.value());
        if (outcome(mended, key) != Outcome.HOLDS) {
            wrong.add(title + ": " + key + " does not hold with " + knob.dotted() + " " + remedy.value());
        }
        for (Verdict after : mended.judgment().verdicts()) {
            Verdict before = verdict(planned, after.key());
            if (after.outcome() != Outcome.HOLDS && (before == null || before.outcome() == Outcome.HOLDS
                    || before.outcome() == Outcome.UNSHOWN && after.outcome() == Outcome.BROKEN
                    || before.outcome() == after.outcome() && after.weight().compareTo(before.weight()) > 0)) {
                wrong.add(title + ": " + knob.dotted() + " " + remedy.value() + " makes " + after.key() + " worse");
            }
        }
        int step = knob.ladder().indexOf(remedy.value());
        if (step > 0 && outcome(with(planned, knob, knob.ladder().get(step - 1)), key) == Outcome.HOLDS) {
            wrong.add(title + ": " + key + " holds with " + knob.dotted() + " " + knob.ladder().get(step - 1)
                    + " already, and " + remedy.value() + " is proposed");
        }
    }

    private static Evaluation with(Evaluation planned, Knob knob, String value) {
        try {
            return Evaluation.of(planned.files().patched(Remedies.patch(knob, value, planned.job().planAt())));
        } catch (UnusableInput e) {
            throw new AssertionError(knob.dotted() + " " + value + ":\n" + e.getMessage(), e);
        }
    }

    private static Outcome outcome(Evaluation evaluation, String key) {
        Verdict verdict = verdict(evaluation, key);
        return verdict == null ? Outcome.NOT_APPLICABLE : verdict.outcome();
    }

    private static Verdict verdict(Evaluation evaluation, String key) {
        return evaluation.judgment().verdicts().stream().filter(one -> one.key().equals(key)).findFirst().orElse(null);
    }
}
