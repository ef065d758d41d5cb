package bayproof.report;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.demand.Weight;
import bayproof.judge.Card;
import bayproof.judge.RuleInfo;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Pages that explain the rule base: the list of rules, a rule's card, a limit. */
public final class RulePages {
    private static final int INDENT = 2;

    private RulePages() {
    }

    /** All rules by topic. */
    public static Paper list(Collection<RuleInfo> rules, Limits limits) {
        RuleBaseDate base = RuleBaseDate.built();
        Paper page = new Paper().line(Plain.count(rules.size(), "rule") + ", rule base " + base.version() + " of " + base.date()
                + ". One in full: why RULE.");
        page.line("No rule looks at: " + base.notLookedAt() + ".");
        looser(page, limits);
        Map<String, List<RuleInfo>> topics = new TreeMap<>();
        rules.forEach(rule -> topics.computeIfAbsent(rule.topic(), any -> new ArrayList<>()).add(rule));
        int longest = rules.stream().mapToInt(rule -> rule.id().length()).max().orElse(0);
        topics.forEach((topic, ofTopic) -> {
            page.blank().line(topic);
            ofTopic.stream().sorted().forEach(rule -> page.hanging("  " + Plain.padded(rule.id(), longest) + "  "
                    + Plain.padded(rule.weight().name(), 6) + "  " + Plain.padded(gate(rule), 8) + "  ", Card.of(rule).title()));
        });
        page.blank().line("order, teardown, power: due before that step. STOP can hurt someone or the vehicle, FIX is to be "
                + "corrected before handover, ADVISE is worth doing.");
        return page;
    }

    private static String gate(RuleInfo rule) {
        return rule.gate().word().replace("before-", "");
    }

    /** The card of one rule, with its limits in force and its cases. */
    public static Paper card(RuleInfo rule, Limits limits) {
        Card card = Card.of(rule);
        Paper page = new Paper().line(card.title());
        page.line(rule.id() + "  " + rule.weight().name() + ", due " + rule.gate().word() + ", topic " + rule.topic());
        looser(page, limits);
        if (card.caution() != null || rule.weight() == Weight.STOP) {
            page.blank();
            Cautions.print(page, card.caution() == null ? List.of() : List.of(card.caution()));
        }
        if (card.noWaiver() != null) {
            page.blank().hanging("CANNOT BE WAIVED  ", 4, Plain.sentence(card.noWaiver()));
        }
        card.sections().forEach((heading, text) -> {
            page.blank().line(heading.toUpperCase(Locale.ROOT));
            Markup.print(page, text, INDENT);
        });
        page.blank().line("SOURCES");
        card.sources().forEach(source -> page.hanging("  - ", source));
        if (!card.limits().isEmpty()) {
            page.blank().line("LIMITS IN FORCE");
            card.limits().forEach(name -> figure(page, limits.named(name), "  "));
        }
        List<Cases.Told> cases = Cases.of(rule);
        if (!cases.isEmpty()) {
            page.blank().line("CASES");
            cases.forEach(one -> page.hanging("  - ", one.title()));
        }
        return page;
    }

    /** One limit: its figure, where it comes from, what others say, which rules use it. */
    public static Paper limit(Limit limit, Collection<RuleInfo> rules) {
        Paper page = new Paper();
        figure(page, limit, "");
        page.hanging("  Safer: ", 4, saferWay(limit));
        if (limit.changed() == null) {
            page.hanging("  In force: ", 4, "this figure, the usual one; a shop puts its own in force with --limits FILE and a reason.");
        }
        List<String> users = rules.stream().filter(rule -> Card.of(rule).limits().contains(limit.name())).map(RuleInfo::id).toList();
        page.hanging("  Used by: ", 4, users.isEmpty() ? "calculations." : String.join(", ", users) + ".");
        return page;
    }

    /** Whether the source was read, for people. */
    private static String stateWords(String state) {
        return state.equals("seen") ? "source seen" : state;
    }

    private static String saferWay(Limit limit) {
        return switch (limit.kind()) {
            case AT_MOST -> "a smaller figure.";
            case AT_LEAST -> "a larger figure.";
            case BETWEEN -> "a higher lower end and a lower upper end.";
            case ONE_OF -> "fewer words.";
            case NONE_OF -> "more words.";
            case WINDOW -> "a wider window, a lower lower end or a higher upper end: it takes in more of what may be so.";
            case VALUE, WORDS -> "neither way for certain, so that any change by a shop counts as looser.";
        };
    }

    /** A limit with its source and what others say. */
    static void figure(Paper page, Limit limit, String margin) {
        int indent = margin.length() + 4;
        page.hanging(margin, indent, limit.name() + ": " + Amounts.figure(limit));
        page.hanging(margin + "  ", indent, Plain.sentence(limit.says()));
        page.hanging(margin + "  Source: ", indent, limit.source() + (limit.state().isEmpty() ? "" : " (" + stateWords(limit.state()) + ")") + ".");
        if (!limit.others().isEmpty()) {
            page.line(margin + "  Others say:");
            limit.others().forEach(other -> page.hanging(margin + "    ", indent + 2, other.value() + "  (" + other.source() + ")"));
        }
        if (limit.changed() != null) {
            page.hanging(margin + "  In force is the shop's own figure" + (limit.changed().looser() ? ", LOOSER than usual. " : ", safer than usual. "),
                    indent, "Usual: " + limit.changed().was() + ". Reason: " + limit.changed().reason() + ".");
        }
    }

    /** Says each looser figure of the shop that is in force. */
    public static void looser(Paper page, Limits limits) {
        limits.all().stream().filter(limit -> limit.changed() != null && limit.changed().looser())
                .forEach(limit -> page.hanging("", 4, "Shop limit, looser than usual: " + limit.name() + ", " + limit.changed().reason()));
    }
}
