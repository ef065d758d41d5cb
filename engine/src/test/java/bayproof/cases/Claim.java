package bayproof.cases;

import bayproof.demand.Outcome;
import bayproof.demand.Weight;

/**
 * What a case says of one rule and subject.
 *
 * @param subject null where the rule finds nothing of its kind
 * @param weight  null where the case does not say
 * @param because half a sentence on why a rule other than the case's own speaks; null where not given
 */
record Claim(String rule, String subject, Outcome outcome, Weight weight, String because) {
    boolean isOfTrouble() {
        return outcome == Outcome.BROKEN || outcome == Outcome.UNSHOWN;
    }

    boolean speaksOf(Said said) {
        return rule.equals(said.rule()) && java.util.Objects.equals(subject, said.subject());
    }

    boolean agreesWith(Said said) {
        return speaksOf(said) && outcome == said.outcome() && (weight == null || weight == said.weight());
    }

    @Override
    public String toString() {
        return rule + " on " + subject + ": " + outcome.word() + (weight == null ? "" : ", " + weight.word());
    }
}
