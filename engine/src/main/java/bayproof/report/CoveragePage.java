package bayproof.report;

import bayproof.report.TradeDemand.State;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What the trade asks for, and what becomes of each demand. */
public final class CoveragePage {
    private static final int COLUMN = 14;

    private CoveragePage() {
    }

    /** The demands by topic, and below them how many have a rule, a reason, or neither. */
    public static Paper of(List<TradeDemand> demands) {
        Paper page = new Paper();
        Map<String, List<TradeDemand>> topics = demands.stream()
                .collect(Collectors.groupingBy(TradeDemand::topic, LinkedHashMap::new, Collectors.toList()));
        topics.forEach((topic, ofTopic) -> {
            page.blank().line(topic.toUpperCase(Locale.ROOT));
            ofTopic.forEach(demand -> row(page, demand));
        });
        page.blank().row(columns("TOPIC", "demands", "by a rule", "reason why not", "open"));
        topics.forEach((topic, ofTopic) -> count(page, topic, ofTopic));
        if (topics.size() > 1) {
            count(page, "all", demands);
        }
        return page.line(summary(demands));
    }

    /** How much of the demands is covered, one sentence. */
    public static String summary(List<TradeDemand> demands) {
        return Plain.count(demands.size(), "demand") + ": " + of(demands, State.RULED) + " with a rule (" + percent(of(demands, State.RULED), demands.size())
                + "), " + of(demands, State.REASONED) + " with a reason why not, " + of(demands, State.OPEN) + " open.";
    }

    private static void row(Paper page, TradeDemand demand) {
        page.hanging("  ", 2, demand.must());
        String due = demand.weight() + ", " + demand.gate().word();
        page.hanging("      ", 6, due + ": " + switch (demand.state()) {
            case RULED -> demand.rule();
            case REASONED -> "no rule. " + demand.whyNot();
            case OPEN -> "open, " + demand.open();
        });
    }

    private static void count(Paper page, String topic, List<TradeDemand> demands) {
        page.row(columns(topic, demands.size() + "", of(demands, State.RULED) + "", of(demands, State.REASONED) + "", of(demands, State.OPEN) + ""));
    }

    private static String columns(String name, String all, String ruled, String reasoned, String open) {
        return String.format(Locale.ROOT, "%-" + COLUMN + "s%9s%11s%16s%7s", name, all, ruled, reasoned, open);
    }

    private static long of(List<TradeDemand> demands, State state) {
        return demands.stream().filter(demand -> demand.state() == state).count();
    }

    private static String percent(long part, int whole) {
        return String.format(Locale.ROOT, "%.1f %%", whole == 0 ? 0 : 100.0 * part / whole);
    }
}
