package bayproof.judge;

import bayproof.demand.Outcome;
import java.util.ArrayList;
import java.util.Collections;
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

    /** These verdicts with those of rules that spoke later, about what the first ones said. */
    Judgment with(Judgment later) {
        List<Verdict> all = new ArrayList<>(verdicts);
        all.addAll(later.verdicts);
        List<NotApplicable> outside = new ArrayList<>(notApplicable);
        outside.removeIf(one -> one.subject() == null && later.speaksBy(one.rule()));
        later.notApplicable.stream().filter(one -> one.subject() != null).forEach(outside::add);
        Collections.sort(all);
        Collections.sort(outside);
        return new Judgment(all, outside);
    }

    private boolean speaksBy(RuleInfo rule) {
        return verdicts.stream().anyMatch(one -> one.rule().equals(rule))
                || notApplicable.stream().anyMatch(one -> one.rule().equals(rule) && one.subject() != null);
    }

    public List<Verdict> of(Outcome outcome) {
        return verdicts.stream().filter(verdict -> verdict.outcome() == outcome).toList();
    }
}
