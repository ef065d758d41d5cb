package bayproof.report;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.judge.Card;
import bayproof.judge.RuleInfo;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Which rules rest on a source. */
public final class SourcePage {
    private SourcePage() {
    }

    /** The rules whose card, or whose limits, name a source that holds the text in whatever case; with the sources that do. */
    public static Paper of(Collection<RuleInfo> rules, Limits limits, String text) {
        Map<RuleInfo, TreeSet<String>> found = new LinkedHashMap<>();
        rules.stream().sorted().forEach(rule -> {
            TreeSet<String> sources = new TreeSet<>(Found.holding(sources(rule, limits).toList(), text));
            if (!sources.isEmpty()) {
                found.put(rule, sources);
            }
        });
        Paper page = new Paper();
        if (found.isEmpty()) {
            return page.line("No rule and no limit names a source with \"" + text + "\". bayproof why RULE names the sources of a rule.");
        }
        page.line(Plain.count(found.size(), "rule") + (found.size() == 1 ? " rests" : " rest") + " on a source with \"" + text + "\".");
        found.forEach((rule, sources) -> {
            page.blank().line(rule.id() + "  " + rule.weight() + ", " + rule.topic());
            sources.forEach(source -> page.hanging("  - ", source));
        });
        return page;
    }

    private static Stream<String> sources(RuleInfo rule, Limits limits) {
        Card card = Card.of(rule);
        List<Limit> used = card.limits().stream().filter(limits::has).map(limits::named).toList();
        return Stream.concat(card.sources().stream(), used.stream().flatMap(SourcePage::sources));
    }

    private static Stream<String> sources(Limit limit) {
        return Stream.concat(Stream.of("limit " + limit.name() + ": " + limit.source()),
                limit.others().stream().map(other -> "limit " + limit.name() + ", others say " + other.value() + ": " + other.source()));
    }
}
