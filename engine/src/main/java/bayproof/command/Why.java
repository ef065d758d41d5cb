package bayproof.command;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.judge.RuleBase;
import bayproof.judge.RuleInfo;
import bayproof.read.LimitsInForce;
import bayproof.read.UnusableInput;
import bayproof.report.Paper;
import bayproof.report.RuleOnPlan;
import bayproof.report.RulePages;
import bayproof.review.Evaluation;
import java.util.Map;

/** The command that explains rules and limits. */
final class Why {
    private final Map<String, RuleInfo> rules = RuleBase.built().rules();
    private final String rule;
    private final String plan;
    private final String limit;
    private final String shop;

    private Why(Order order) {
        rule = order.subject();
        plan = order.word("--in", null);
        limit = order.word("--limit", null);
        shop = order.word("--limits", null);
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        return Reply.answer(new Why(order).page().text());
    }

    private Paper page() throws WrongUse, UnusableInput {
        if (rule != null && limit != null) {
            throw new WrongUse("A rule and a limit are two questions.", "Ask for one of them.");
        }
        if (limit != null) {
            return limitPage();
        }
        if (rule == null) {
            if (plan != null) {
                throw new WrongUse("--in needs a rule.", "All rules on a plan: bayproof review " + plan + " --all.");
            }
            return RulePages.list(rules.values(), limits());
        }
        RuleInfo known = rules.get(rule);
        if (known == null) {
            throw new WrongUse("There is no rule \"" + rule + "\".",
                    Nearest.suggestion(rule, rules.keySet(), "bayproof why lists all of them."));
        }
        return plan == null ? RulePages.card(known, limits()) : RuleOnPlan.of(known, evaluation(), plan);
    }

    private Paper limitPage() throws WrongUse, UnusableInput {
        Limits limits = limits();
        if (!limits.has(limit)) {
            throw new WrongUse("There is no limit \"" + limit + "\".", Nearest.suggestion(limit,
                    limits.all().stream().map(Limit::name).toList(), "The card of a rule names its limits: bayproof why RULE."));
        }
        return RulePages.limit(limits.named(limit), rules.values());
    }

    private Evaluation evaluation() throws WrongUse, UnusableInput {
        return Review.evaluate(plan, shop);
    }

    private Limits limits() throws WrongUse, UnusableInput {
        return plan != null ? evaluation().job().limits() : LimitsInForce.read(shop == null ? null : Review.file(shop));
    }
}
