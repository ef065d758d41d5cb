package bayproof.command;

import bayproof.demand.Limits;
import bayproof.demand.Outcome;
import bayproof.figure.Figure;
import bayproof.figure.FigureMistake;
import bayproof.figure.Figures;
import bayproof.figure.NumberFigure;
import bayproof.figure.RuleFigure;
import bayproof.read.LimitsInForce;
import bayproof.read.UnusableInput;
import bayproof.report.FigureJson;
import bayproof.report.FigurePage;
import java.util.List;

/** The command that works out one number, or asks one rule, without a plan. */
final class ByHand {
    private static final List<String> FORMS = List.of("text", "json");

    private ByHand() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        boolean json = Review.oneOf("--as", order.word("--as", "text"), FORMS).equals("json");
        String shop = order.word("--limits", null);
        Limits limits = LimitsInForce.read(shop == null ? null : Review.file(shop));
        if (order.subject() == null) {
            return Reply.answer(json ? FigureJson.list() : FigurePage.list().text());
        }
        try {
            Figure figure = Figures.named(order.subject());
            if (order.values().isEmpty() && !json) {
                return Reply.answer(FigurePage.takes(figure).text());
            }
            return figure instanceof NumberFigure number ? number(number, order.values(), limits, json) : rule((RuleFigure) figure, order.values(), limits, json);
        } catch (FigureMistake e) {
            throw new WrongUse(e.getMessage(), e.unknown() == null ? e.fix() : Nearest.suggestion(e.unknown(), e.known(), e.fix()));
        }
    }

    private static Reply number(NumberFigure figure, List<String> values, Limits limits, boolean json) throws FigureMistake {
        NumberFigure.Answer answer = figure.ask(values, limits);
        return Reply.answer(json ? FigureJson.of(figure, answer) : FigurePage.of(figure, answer).text());
    }

    private static Reply rule(RuleFigure figure, List<String> values, Limits limits, boolean json) throws FigureMistake {
        RuleFigure.Answer answer = figure.ask(values, limits);
        boolean broken = answer.verdict() != null && answer.verdict().outcome() != Outcome.HOLDS;
        return new Reply(broken ? Reply.COUNTS : Reply.CLEAR, json ? FigureJson.of(figure, answer) : FigurePage.of(figure, answer, limits).text(), "");
    }
}
