package bayproof.command;

import bayproof.demand.Limits;
import bayproof.judge.FormerRules;
import bayproof.judge.RuleBase;
import bayproof.judge.RuleInfo;
import bayproof.read.LimitsInForce;
import bayproof.read.UnusableInput;
import bayproof.report.CoveragePage;
import bayproof.report.MistakePage;
import bayproof.report.Paper;
import bayproof.report.RuleOnPlan;
import bayproof.report.RulePages;
import bayproof.report.SourcePage;
import bayproof.report.TradeDemand;
import bayproof.report.TradeDemands;
import bayproof.review.Evaluation;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The command that explains rules and limits. */
final class Why {
    /** Of these one can be asked at a time; a rule is a question of its own. */
    private static final List<String> QUESTIONS = List.of("--limit", "--source", "--mistake", "--coverage");

    private final Map<String, RuleInfo> rules = RuleBase.built().rules();
    private final Order order;
    private final String rule;
    private final String plan;

    private Why(Order order) {
        this.order = order;
        rule = order.subject();
        plan = order.word("--in", null);
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        return Reply.answer(new Why(order).page().text());
    }

    private Paper page() throws WrongUse, UnusableInput {
        String question = question();
        if (plan != null && rule == null) {
            throw new WrongUse("--in needs a rule.", "All rules on a plan: bayproof review " + plan + " --all.");
        }
        if (order.has("--topic") && (rule != null || question.equals("--limit"))) {
            throw new WrongUse("--topic narrows a list, and this asks for one page.", "Leave it out.");
        }
        return switch (question) {
            case "--limit" -> limitPage(order.word("--limit", ""));
            case "--source" -> SourcePage.of(rulesOfTopics(), limits(), order.word("--source", ""));
            case "--mistake" -> MistakePage.of(rulesOfTopics(), order.word("--mistake", ""));
            case "--coverage" -> CoveragePage.of(demandsOfTopics());
            case "RULE" -> rulePage();
            default -> RulePages.list(rulesOfTopics(), limits());
        };
    }

    /** What is asked: an option, RULE, or the empty word for the list of rules. */
    private String question() throws WrongUse {
        List<String> asked = Stream.concat(rule == null ? Stream.of() : Stream.of("RULE"), QUESTIONS.stream().filter(order::has)).toList();
        if (asked.size() > 1) {
            throw new WrongUse(String.join(" and ", asked) + " are " + (asked.size() == 2 ? "two" : "several") + " questions.", "Ask for one of them.");
        }
        return asked.isEmpty() ? "" : asked.get(0);
    }

    private Paper rulePage() throws WrongUse, UnusableInput {
        RuleInfo known = rules.get(FormerRules.built().current(rule));
        FormerRules.Former former = FormerRules.built().of(rule);
        if (known == null) {
            throw new WrongUse(former == null ? "There is no rule \"" + rule + "\"." : FormerRules.built().last(rule).says(),
                    Nearest.suggestion(rule, rules.keySet(), "bayproof why lists all of them."));
        }
        Paper page = plan == null ? RulePages.card(known, limits()) : RuleOnPlan.of(known, evaluation(), plan);
        return former == null ? page : new Paper().line(former.says()).blank().all(page);
    }

    private Paper limitPage(String limit) throws WrongUse, UnusableInput {
        Limits limits = limits();
        if (!limits.has(limit)) {
            throw new WrongUse("There is no limit \"" + limit + "\".", Nearest.suggestion(limit,
                    limits.all().stream().map(known -> known.name()).toList(), "The card of a rule names its limits: bayproof why RULE."));
        }
        return RulePages.limit(limits.named(limit), rules.values());
    }

    private Collection<RuleInfo> rulesOfTopics() throws WrongUse {
        List<String> topics = topics(rules.values().stream().map(RuleInfo::topic).distinct().sorted().toList());
        return rules.values().stream().filter(known -> topics.contains(known.topic())).toList();
    }

    private List<TradeDemand> demandsOfTopics() throws WrongUse {
        List<String> topics = topics(TradeDemands.topics());
        return TradeDemands.all().stream().filter(demand -> topics.contains(demand.topic())).toList();
    }

    /** The topics asked for; all that are known where none is. */
    private List<String> topics(List<String> known) throws WrongUse {
        for (String topic : order.words("--topic")) {
            if (!known.contains(topic)) {
                throw new WrongUse("There is no topic \"" + topic + "\" here.", Nearest.suggestion(topic, known, "The topics are " + String.join(", ", known) + "."));
            }
        }
        return order.has("--topic") ? order.words("--topic") : known;
    }

    private Evaluation evaluation() throws WrongUse, UnusableInput {
        return Review.evaluate(plan, order.word("--limits", null));
    }

    private Limits limits() throws WrongUse, UnusableInput {
        String shop = order.word("--limits", null);
        return plan != null ? evaluation().job().limits() : LimitsInForce.read(shop == null ? null : Review.file(shop));
    }
}
