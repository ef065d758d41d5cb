package bayproof.judge;

import bayproof.demand.Outcome;
import java.util.List;

/**
 * All verdicts on one job, over all gates, in a stable order.
 *
 * @param verdicts      those that apply
 * @param notApplicable those that do not, with the reason
 */
public record Judgment(List<Verdict> verdicts, List<NotApplicable> notApplicable) {

    /**
     * A rule that does not apply.
     *
     * @param subject path of the subject; null where nothing of its kind is in the job
     */
    public record NotApplicable(RuleInfo rule, String subject, String reason) implements Comparable<NotApplicable> {
        @Override
        public int compareTo(NotApplicable other) {
            int byRule = rule.compareTo(other.rule);
            return byRule != 0 ? byRule : String.valueOf(subject).compareTo(String.valueOf(other.subject));
        }
    }

    public Judgment {
        verdicts = List.copyOf(verdicts);
        notApplicable = List.copyOf(notApplicable);
    }

    public List<Verdict> of(Outcome outcome) {
        return verdicts.stream().filter(verdict -> verdict.outcome() == outcome).toList();
    }
}
