package bayproof.report;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.demand.Outcome;
import bayproof.figure.Figure;
import bayproof.figure.Figures;
import bayproof.figure.Input;
import bayproof.figure.NumberFigure;
import bayproof.figure.RuleFigure;
import bayproof.judge.Card;
import bayproof.judge.RuleBase;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.read.Sizes;
import bayproof.units.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/** One number or one rule worked out by hand, and what can be asked. */
public final class FigurePage {
    private static final int DIGITS = 3;

    private FigurePage() {
    }

    /** Everything that can be asked, with an example each. */
    public static Paper list() {
        Paper page = new Paper().line("What can be worked out by hand: bayproof figure NAME name=value ... Every quantity carries its unit.");
        page.blank().line("NUMBERS  " + Figures.numbers().size());
        for (NumberFigure number : Figures.numbers()) {
            entry(page, number, number.says());
        }
        page.blank().line("RULES  " + Figures.rules().size() + "  (the rule's own sum, its limit and its verdict)");
        for (RuleFigure rule : Figures.rules()) {
            entry(page, rule, Card.of(RuleBase.built().rules().get(rule.name())).title());
        }
        page.blank().line("NOT BY HAND");
        Figures.notByHand().forEach((rule, why) -> page.hanging("  " + rule + ": ", 6, why + "."));
        int others = RuleBase.built().rules().size() - Figures.rules().size() - Figures.notByHand().size();
        return page.hanging("  ", 6, Plain.count(others, "other rule") + " hold no number against a limit: bayproof why.");
    }

    private static void entry(Paper page, Figure figure, String says) {
        page.hanging("  " + figure.name() + ": ", 6, says);
        page.hanging("      ", 8, figure.example());
    }

    /** What a figure is worked out from. */
    public static Paper takes(Figure figure) {
        Paper page = new Paper().line(figure instanceof NumberFigure number ? Plain.sentence(number.says())
                : Plain.sentence(Card.of(RuleBase.built().rules().get(figure.name())).title()));
        page.blank().line("IT TAKES");
        for (Input input : figure.inputs()) {
            page.hanging("  " + input.name() + ": ", 6, input.says() + "; " + input.written() + otherwise(input) + ".");
        }
        page.blank().line("EXAMPLE");
        return page.hanging("  ", 6, figure.command());
    }

    private static String otherwise(Input input) {
        return input.needed() ? "" : input.otherwise().isEmpty() ? "; may be left out" : "; " + input.otherwise() + " where it is left out";
    }

    // a number

    public static Paper of(NumberFigure figure, NumberFigure.Answer answer) {
        Paper page = new Paper();
        List<NumberFigure.Value> values = answer.worked().values();
        boolean single = values.get(0).name().isEmpty();
        page.hanging("", 2, Plain.capital(figure.says()) + ": " + (single ? print(values.get(0)) : values.stream().map(value -> value.name() + " " + print(value))
                .collect(java.util.stream.Collectors.joining(", "))) + ".");
        if (single) {
            values.stream().skip(1).forEach(value -> page.hanging("  ", 4, Plain.capital(value.name()) + ": " + print(value) + "."));
        }
        if (!answer.worked().remark().isEmpty()) {
            page.hanging("  ", 4, answer.worked().remark());
        }
        page.hanging("  Calculation: ", 4, Sizes.bothWays(answer.worked().calculation()));
        return page.hanging("  Source: ", 4, figure.source() + ".");
    }

    private static String print(NumberFigure.Value value) {
        return value.dimension() == null ? new BigDecimal(value.si()).round(new MathContext(DIGITS)).toPlainString() : Units.print(value.si(), value.dimension());
    }

    // a rule

    public static Paper of(RuleFigure figure, RuleFigure.Answer answer, Limits limits) {
        RuleInfo rule = RuleBase.built().rules().get(figure.name());
        Paper page = new Paper();
        Verdict verdict = answer.verdict();
        if (verdict == null) {
            page.hanging("", 2, "Does not apply: " + answer.outside() + ".");
        } else {
            page.hanging("", 2, word(verdict) + ": " + verdict.because() + ".");
            String margin = Amounts.margin(verdict);
            if (margin != null) {
                page.hanging("  ", 4, Plain.sentence(margin));
            }
        }
        if (!answer.calculation().isEmpty()) {
            page.hanging("  Calculation: ", 4, Sizes.bothWays(answer.calculation()));
        }
        if (verdict != null && verdict.limit() != null) {
            limit(page, verdict.limit().limit(), limits);
        }
        RulePages.looser(page, limits);
        return page.hanging("  ", 4, "By the numbers given, and nothing else that the rule asks for: bayproof why " + rule.id() + ".");
    }

    private static String word(Verdict verdict) {
        return verdict.outcome() == Outcome.BROKEN ? "BROKEN, " + verdict.weight().name() : verdict.outcome() == Outcome.HOLDS ? "HOLDS" : "NOT SHOWN";
    }

    private static void limit(Paper page, Limit limit, Limits limits) {
        if (limits.has(limit.name())) {
            page.line("  Limit:");
            RulePages.figure(page, limit, "    ");
        } else {
            page.hanging("  Limit: ", 4, limit.name() + ", as given.");
        }
    }
}
