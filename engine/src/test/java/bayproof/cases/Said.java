package bayproof.cases;

import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.judge.Judgment;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * What the judgment of a job says of one rule and subject, as far as cases compare it.
 *
 * @param weight null where the rule does not apply
 */
record Said(String rule, String subject, Outcome outcome, Weight weight) {
    static Set<Said> all(Judgment judgment) {
        Set<Said> all = new LinkedHashSet<>();
        judgment.verdicts().forEach(verdict ->
                all.add(new Said(verdict.rule().id(), verdict.subject(), verdict.outcome(), verdict.weight())));
        judgment.notApplicable().forEach(outside ->
                all.add(new Said(outside.rule().id(), outside.subject(), Outcome.NOT_APPLICABLE, null)));
        return all;
    }

    boolean isTrouble() {
        return outcome == Outcome.BROKEN || outcome == Outcome.UNSHOWN;
    }

    @Override
    public String toString() {
        return rule + " on " + subject + ": " + outcome.word() + (weight == null ? "" : ", " + weight.word());
    }
}
