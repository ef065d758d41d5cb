package bayproof.review;

import bayproof.judge.Judgment;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.demand.Outcome;
import java.util.List;

/**
 * What one rule says of one subject in two jobs, where that differs.
 *
 * @param sort          what kind of difference it is
 * @param rule          the rule
 * @param subject       path of the subject
 * @param before        the verdict before; null where the rule did not apply or the subject was not there
 * @param after         the verdict now; null where the rule does not apply or the subject is not there
 * @param outsideBefore why the rule did not apply before; null where it did, or nothing was there
 * @param outsideAfter  why the rule does not apply now; null where it does, or nothing is there
 * @param reasons       changes each of which moves it alone; empty where no single one does, or where none was tried
 */
public record Move(Sort sort, RuleInfo rule, String subject, Verdict before, Verdict after, String outsideBefore, String outsideAfter,
                   List<Change> reasons) {
    /** Kinds of difference, in the order of a report. */
    public enum Sort {
        WORSE("got worse"), BETTER("got better"), NEW("new subject"), GONE("gone subject"), APPLIES("only whether it applies moved"),
        NUMBER("only the number moved");

        private final String words;

        Sort(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Move {
        reasons = List.copyOf(reasons);
    }

    Move because(List<Change> found) {
        return new Move(sort, rule, subject, before, after, outsideBefore, outsideAfter, found);
    }

    String key() {
        return rule.id() + " " + subject;
    }

    /** The outcome before; null where there was no such subject. */
    public Outcome outcomeBefore() {
        return outcome(before, outsideBefore);
    }

    /** The outcome now; null where there is no such subject. */
    public Outcome outcomeAfter() {
        return outcome(after, outsideAfter);
    }

    private static Outcome outcome(Verdict verdict, String outside) {
        return verdict != null ? verdict.outcome() : outside != null ? Outcome.NOT_APPLICABLE : null;
    }

    /** Why a rule does not apply to a subject, by the same key as a verdict's. */
    static String key(Judgment.NotApplicable one) {
        return one.rule().id() + " " + one.subject();
    }
}
