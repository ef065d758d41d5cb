package bayproof.read;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.demand.Weight;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.units.Quantity;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.At;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Reads the named limits of the trade, and a shop's own figures in place of some of them. */
final class LimitsReader {
    private static final Map<String, Limit.Kind> KINDS = new TreeMap<>(Map.of("at-most", Limit.Kind.AT_MOST,
            "at-least", Limit.Kind.AT_LEAST, "between", Limit.Kind.BETWEEN, "one-of", Limit.Kind.ONE_OF,
            "none-of", Limit.Kind.NONE_OF, "window", Limit.Kind.WINDOW, "value", Limit.Kind.VALUE, "words", Limit.Kind.WORDS));
    static final List<String> KEYS = List.of("says", "source", "state", "others", "reason");

    /** Tables of limits: what several topics use, then one table a topic. */
    private static final List<String> TABLES = List.of("limits.yaml", "limits-protection.yaml", "limits-conductors.yaml",
            "limits-grounds.yaml", "limits-routing.yaml", "limits-terminations.yaml", "limits-mounting.yaml", "limits-work.yaml",
            "limits-supply.yaml", "limits-integration.yaml", "limits-vehicle.yaml", "limits-bench.yaml",
            "limits-speakers.yaml", "limits-signal.yaml", "limits-proving.yaml", "limits-enclosures.yaml");

    /** The default limits, read once. */
    private static final class Defaults {
        static final MapTree TREE;
        static final Limits LIMITS;

        static {
            try {
                Problems problems = new Problems();
                Map<String, Entry> all = new LinkedHashMap<>();
                for (String table : TABLES) {
                    ((MapTree) SharedTables.file(table).get("limits")).entries().forEach((name, entry) -> {
                        if (all.put(name, entry) != null) {
                            problems.add(entry.keyAt(), "\"" + name + "\" stands in two tables of limits.", "");
                        }
                    });
                }
                TREE = new MapTree(all, new At(TABLES.get(0), 1, 1));
                Map<String, Limit> byName = new TreeMap<>();
                for (Entry entry : TREE.entries().values()) {
                    Limit limit = limit(entry, problems);
                    if (limit != null) {
                        byName.put(limit.name(), limit);
                    }
                }
                problems.throwIfAny();
                LIMITS = new Limits(byName);
            } catch (UnusableInput e) {
                throw new IllegalStateException("the table of limits is not sound:\n" + e.getMessage(), e);
            }
        }
    }

    private LimitsReader() {
    }

    static Limits defaults() {
        return Defaults.LIMITS;
    }

    /** The figure of a default limit as its table writes it. */
    static String builtIn(Limit limit) {
        return text(((MapTree) Defaults.TREE.get(limit.name())).get(word(limit.kind())));
    }

    /** The default limits with a shop's figures put over them. */
    static Limits withShop(MapTree shopFile, Problems problems) {
        Tree given = shopFile.get("limits");
        if (given == null) {
            return defaults();
        }
        Limits limits = defaults();
        if (!(given instanceof MapTree shop)) {
            problems.add(given.at(), "\"limits\" must be a group of limit names.", "");
            return limits;
        }
        for (Entry entry : shop.entries().values()) {
            if (!limits.has(entry.key())) {
                problems.unknown(entry.keyAt(), "the name of a limit", entry.key(), Defaults.TREE.entries().keySet());
                continue;
            }
            if (!(entry.value() instanceof MapTree own) || !(own.get("reason") instanceof ScalarTree reason) || reason.isEmpty()) {
                problems.add(entry.keyAt(), "a figure of the shop's own needs a reason.", "Add \"reason:\" in a few words.");
                continue;
            }
            Limit before = limits.named(entry.key());
            MapTree base = (MapTree) Defaults.TREE.get(entry.key());
            for (String key : own.entries().keySet()) {
                if (KINDS.containsKey(key) && KINDS.get(key) != before.kind()) {
                    problems.add(own.entries().get(key).keyAt(), "\"" + entry.key() + "\" is not a limit of this kind.",
                            "It is written with \"" + word(before.kind()) + "\".");
                }
            }
            Limit after = limit(new Entry(entry.key(), entry.keyAt(), MergePatch.apply(base, own)), problems);
            if (after == null) {
                continue;
            }
            if (after.unit() != null && before.unit() != null && !after.unit().equals(before.unit())) {
                problems.add(entry.keyAt(), "\"" + entry.key() + "\" is a figure in " + before.unit() + ", not in " + after.unit() + ".",
                        "The default is " + text(base.get(word(before.kind()))) + ".");
            }
            limits = limits.with(new Limit(after.name(), after.unit(), after.kind(), after.steps(), after.low(), after.high(),
                    after.words(), after.says(), before.source(), before.state(), before.others(),
                    new Limit.Change(text(base.get(word(before.kind()))), reason.text(), looser(before, after))));
        }
        return limits;
    }

    static String word(Limit.Kind kind) {
        return KINDS.entrySet().stream().filter(entry -> entry.getValue() == kind).findFirst().orElseThrow().getKey();
    }

    private static boolean looser(Limit before, Limit after) {
        switch (before.kind()) {
            case AT_MOST, AT_LEAST -> {
                double sign = before.kind() == Limit.Kind.AT_MOST ? 1 : -1;
                for (int i = 0; i < before.steps().size(); i++) {
                    if (i >= after.steps().size() || sign * (after.steps().get(i).value() - before.steps().get(i).value()) > 0) {
                        return true;
                    }
                }
                return false;
            }
            case ONE_OF -> {
                return !before.words().containsAll(after.words());
            }
            case NONE_OF -> {
                return !after.words().containsAll(before.words());
            }
            case BETWEEN -> {
                return after.low() < before.low() || after.high() > before.high();
            }
            // Which way is safer is not known of these: any change may be looser.
            case VALUE -> {
                return !after.steps().equals(before.steps());
            }
            case WORDS -> {
                return !Set.copyOf(after.words()).equals(Set.copyOf(before.words()));
            }
            default -> {
                return after.low() > before.low() || after.high() < before.high();
            }
        }
    }

    private static String text(Tree tree) {
        if (tree instanceof ScalarTree scalar) {
            return scalar.text();
        }
        if (tree instanceof ListTree list) {
            return String.join(" to ", list.items().stream().map(LimitsReader::text).toList());
        }
        MapTree map = (MapTree) tree;
        return String.join(", ", map.entries().values().stream().map(entry -> entry.key() + " " + text(entry.value())).toList());
    }

    private static Limit limit(Entry entry, Problems problems) {
        if (!(entry.value() instanceof MapTree map)) {
            problems.add(entry.keyAt(), "a limit is a group of keys.", "");
            return null;
        }
        Limit.Kind kind = null;
        Tree figure = null;
        for (Entry one : map.entries().values()) {
            if (KINDS.containsKey(one.key())) {
                if (kind != null) {
                    problems.add(one.keyAt(), "a limit has one figure.", "Keep one of \"" + word(kind) + "\" and \"" + one.key() + "\".");
                }
                kind = KINDS.get(one.key());
                figure = one.value();
            } else if (!KEYS.contains(one.key())) {
                problems.unknown(one.keyAt(), "a key of a limit", one.key(), KINDS.keySet());
            }
        }
        if (kind == null) {
            problems.add(entry.keyAt(), "\"" + entry.key() + "\" has no figure.", "Write one of: " + String.join(", ", KINDS.keySet()) + ".");
            return null;
        }
        List<Limit.Other> others = new ArrayList<>();
        if (map.get("others") instanceof MapTree more) {
            more.entries().values().forEach(other -> others.add(new Limit.Other(other.key(), text(other.value()))));
        }
        Figures figures = new Figures(problems);
        figures.read(kind, figure);
        return new Limit(entry.key(), figures.unit, kind, figures.steps, figures.low, figures.high, figures.words,
                plain(map, "says"), plain(map, "source"), plain(map, "state"), others, null);
    }

    private static String plain(MapTree map, String key) {
        return map.get(key) instanceof ScalarTree scalar ? scalar.text() : "";
    }

    /** The figures of one limit while they are read. */
    private static final class Figures {
        private final Problems problems;
        private final List<Limit.Step> steps = new ArrayList<>();
        private final List<String> words = new ArrayList<>();
        private String unit;
        private double low = Double.NaN;
        private double high = Double.NaN;

        Figures(Problems problems) {
            this.problems = problems;
        }

        void read(Limit.Kind kind, Tree figure) {
            switch (kind) {
                case AT_MOST, AT_LEAST, VALUE -> {
                    if (figure instanceof MapTree graded && kind != Limit.Kind.VALUE) {
                        graded.entries().values().forEach(step -> step(weight(step), step.value()));
                    } else {
                        step(null, figure);
                    }
                    // The one that must hold first comes first, however the file orders them.
                    Comparator<Limit.Step> least = Comparator.comparingDouble(Limit.Step::value);
                    steps.sort(kind == Limit.Kind.AT_LEAST ? least.reversed() : least);
                }
                case ONE_OF, NONE_OF, WORDS -> {
                    if (figure instanceof ListTree list) {
                        list.items().forEach(item -> words.add(text(item)));
                    } else {
                        problems.add(figure.at(), "a list of words is needed.", "");
                    }
                }
                default -> {
                    if (figure instanceof ListTree list && list.items().size() == 2) {
                        low = number(list.items().get(0));
                        high = number(list.items().get(1));
                        if (low > high) {
                            problems.add(figure.at(), "the lower end comes first.", "");
                        }
                    } else {
                        problems.add(figure.at(), "two figures are needed.", "Write [ low, high ].");
                    }
                }
            }
        }

        private Weight weight(Entry step) {
            try {
                return Weight.of(step.key());
            } catch (IllegalArgumentException e) {
                problems.unknown(step.keyAt(), "a weight", step.key(), List.of("advise", "fix", "stop"));
                return null;
            }
        }

        private void step(Weight weight, Tree tree) {
            steps.add(new Limit.Step(weight, number(tree)));
        }

        private double number(Tree tree) {
            At at = tree.at();
            if (tree instanceof ScalarTree scalar) {
                try {
                    Quantity quantity = Units.parse(scalar.text());
                    String symbol = quantity.dimension().symbol();
                    if (unit != null && !unit.equals(symbol)) {
                        problems.add(at, "\"" + scalar.text() + "\" is of another kind than the figure before it.", "Give both in one unit.");
                    }
                    unit = symbol;
                    return quantity.si();
                } catch (UnitException e) {
                    problems.add(at, "\"" + scalar.text() + "\" is not a figure.", e.getMessage());
                    return Double.NaN;
                }
            }
            problems.add(at, "a figure with its unit is needed.", "");
            return Double.NaN;
        }
    }
}
