package bayproof.report;

import bayproof.demand.Gate;
import bayproof.demand.Weight;
import bayproof.judge.RuleFault;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Reads the tables of what the trade asks for. A mistake in one is the tool's own fault, thrown with its position. */
public final class TradeDemands {
    private static final String FOLDER = "/bayproof/demands/";

    private TradeDemands() {
    }

    /** Names of the tables in the order of the work. */
    public static List<String> topics() {
        return RuleBaseDate.built().topics();
    }

    /** All demands, table by table, in the order of the files. */
    public static List<TradeDemand> all() {
        List<TradeDemand> demands = new ArrayList<>();
        for (String topic : topics()) {
            try (InputStream in = TradeDemands.class.getResourceAsStream(FOLDER + topic + ".yaml")) {
                if (in == null) {
                    throw new RuleFault("the table of demands " + topic + ".yaml is not built in");
                }
                demands.addAll(of(topic, TreeReader.read(in.readAllBytes(), topic + ".yaml")));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (UnusableInput e) {
                throw new RuleFault("the table of demands cannot be read: " + e.getMessage(), e);
            }
        }
        return demands;
    }

    static List<TradeDemand> of(String topic, MapTree table) {
        if (!(table.get("demands") instanceof MapTree rows)) {
            throw new RuleFault(table.at() + ": a table of demands holds a group of them");
        }
        return rows.entries().values().stream().map(row -> demand(topic, row)).toList();
    }

    private static TradeDemand demand(String topic, Entry row) {
        MapTree map = group(row.value(), row.value());
        MapTree due = group(map.get("due"), map);
        String rule = word(map, "rule");
        String whyNot = word(map, "why-not");
        String open = word(map, "open");
        if (Stream.of(rule, whyNot, open).filter(Objects::nonNull).count() != 1) {
            throw new RuleFault(row.keyAt() + ": a demand has either a rule, or why-not, or an open rule");
        }
        try {
            return new TradeDemand(row.key(), topic, Objects.requireNonNull(word(map, "must")), words(map.get("sources")),
                    Gate.of(Objects.requireNonNull(word(due, "gate"))), Weight.of(Objects.requireNonNull(word(due, "weight"))), rule, whyNot, open);
        } catch (IllegalArgumentException | NullPointerException e) {
            throw new RuleFault(row.keyAt() + ": a demand says what must be, and with which gate and weight", e);
        }
    }

    private static MapTree group(Tree tree, Tree where) {
        if (tree instanceof MapTree map) {
            return map;
        }
        throw new RuleFault(where.at() + ": a group of keys is needed here");
    }

    private static String word(MapTree map, String key) {
        return map.get(key) instanceof ScalarTree scalar && !scalar.isEmpty() ? scalar.text() : null;
    }

    private static List<String> words(Tree tree) {
        return tree instanceof ListTree list
                ? list.items().stream().filter(ScalarTree.class::isInstance).map(item -> ((ScalarTree) item).text()).toList() : List.of();
    }
}
