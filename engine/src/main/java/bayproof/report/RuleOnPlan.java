package bayproof.report;

import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.facts.Numbers;
import bayproof.judge.Card;
import bayproof.judge.Judgment;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.read.Waiver;
import bayproof.review.AcceptedValue;
import bayproof.review.Evaluation;
import bayproof.vocabulary.Fact;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What one rule found in one plan: for each subject the verdict, the numbers and the facts behind it. */
public final class RuleOnPlan {
    private final RuleInfo rule;
    private final Evaluation evaluation;
    private final Places places;

    private RuleOnPlan(RuleInfo rule, Evaluation evaluation, Places places) {
        this.rule = rule;
        this.evaluation = evaluation;
        this.places = places;
    }

    /** @param plan the plan's file as the user gave it */
    public static Paper of(RuleInfo rule, Evaluation evaluation, String plan) {
        return new RuleOnPlan(rule, evaluation, new Places(plan)).paper();
    }

    private Paper paper() {
        Paper page = new Paper().line(Card.of(rule).title());
        page.line(rule.id() + "  " + rule.weight().name() + ", due " + rule.gate().word());
        RulePages.looser(page, evaluation.job().limits());
        for (Verdict verdict : evaluation.judgment().verdicts()) {
            if (verdict.rule().id().equals(rule.id())) {
                verdict(page, verdict);
            }
        }
        for (Judgment.NotApplicable one : evaluation.judgment().notApplicable()) {
            if (one.rule().id().equals(rule.id())) {
                page.blank().hanging("", 6, (one.subject() == null ? "" : one.subject() + "  ") + "does not apply: " + one.reason() + ".");
                if (one.subject() != null) {
                    facts(page, one.subject(), null);
                }
            }
        }
        return page;
    }

    private void verdict(Paper page, Verdict verdict) {
        page.blank().parts(0, List.of(verdict.subject(), places.line(verdict.at()), word(verdict)));
        page.hanging("  Because: ", 4, Plain.sentence(verdict.because()));
        Numbers.Figure figure = Rest.figure(evaluation, verdict);
        if (figure != null && figure.calculation() != null) {
            page.hanging("  Worked out: ", 4, Plain.sentence(figure.calculation()));
        }
        String margin = Amounts.margin(verdict);
        if (margin != null) {
            page.hanging("  Margin: ", 4, margin + ".");
        }
        verdict.needs().forEach(need -> page.hanging("  Waits for: ", 4, QuestionText.words(need) + "."));
        facts(page, verdict.subject(), verdict.measured());
        Waiver waiver = evaluation.waiver(verdict, rule.gate());
        if (waiver != null) {
            page.hanging("  Waived: ", 4, WaiverText.whole(waiver));
        } else if (verdict.outcome() != Outcome.HOLDS) {
            toAccept(page, verdict);
        }
    }

    /** An entry for waivers.yaml with what this verdict rests on; what is decided is left to write. */
    private void toAccept(Paper page, Verdict verdict) {
        String reason = Card.of(rule).noWaiver();
        if (reason != null) {
            page.hanging("  Cannot be accepted: ", 4, Plain.sentence(reason));
            return;
        }
        page.line("  To accept it for a time, in waivers.yaml under \"waivers:\", with a name of your own:");
        String margin = "    ";
        page.line(margin + "a-name:");
        page.line(margin + "  rule: " + rule.id()).line(margin + "  subject: " + verdict.subject());
        String value = AcceptedValue.of(verdict);
        String limit = AcceptedValue.limit(verdict);
        if (value != null) {
            page.line(margin + "  measured: " + value);
        }
        if (limit != null) {
            page.line(margin + "  limit: " + limit);
        }
        page.line(margin + "  facts: \"" + verdict.mark().get() + "\"").line(margin + "  reason: unknown").line(margin + "  by: { initials: unknown, role: unknown }");
        if (verdict.weight() == Weight.STOP) {
            page.line(margin + "  second: { initials: unknown, role: unknown }");
        }
        page.line(margin + "  date: unknown").line(margin + (verdict.outcome() == Outcome.UNSHOWN ? "  measured-by: unknown" : "  until: unknown"));
    }

    private static String word(Verdict verdict) {
        return switch (verdict.outcome()) {
            case HOLDS -> "holds";
            case BROKEN -> "BROKEN, " + verdict.weight().name();
            case UNSHOWN -> "NOT SHOWN, could weigh " + verdict.weight().name();
            case NOT_APPLICABLE -> throw new IllegalStateException("a verdict applies");
        };
    }

    private void facts(Paper page, String subject, Verdict.Measured measured) {
        page.line("  What is known of it:");
        Set<String> said = new LinkedHashSet<>();
        for (Fact fact : evaluation.facts().facts()) {
            if (fact.subject().equals(subject)) {
                said.addAll(FactText.lines(fact, measured));
            }
        }
        said.forEach(line -> page.hanging("    ", 8, line));
    }
}
