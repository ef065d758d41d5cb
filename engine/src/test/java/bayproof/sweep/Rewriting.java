package bayproof.sweep;

import bayproof.read.JobFiles;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Ways to say the same job otherwise: in another order, with other names, in other units. */
final class Rewriting {
    private Rewriting() {
    }

    // order

    /** Lists whose order is a statement. */
    private static final Set<String> ORDERED = Set.of("along", "through");

    static MapTree shuffled(MapTree tree, Random random) {
        List<Entry> entries = new ArrayList<>(tree.entries().values());
        Collections.shuffle(entries, random);
        Map<String, Entry> result = new LinkedHashMap<>();
        entries.forEach(entry -> result.put(entry.key(), new Entry(entry.key(), entry.keyAt(), shuffled(entry, random))));
        return new MapTree(result, tree.at());
    }

    private static Tree shuffled(Entry entry, Random random) {
        if (entry.value() instanceof MapTree map) {
            return shuffled(map, random);
        }
        // The two ends of a window or a range stand in their order.
        if (entry.value() instanceof ListTree list && !ORDERED.contains(entry.key()) && !entry.key().equals("window")) {
            List<Tree> items = new ArrayList<>(list.items());
            Collections.shuffle(items, random);
            return new ListTree(items, list.at());
        }
        return entry.value();
    }

    // names

    /** The names a job gives, each turned round: no name then keeps its place in the alphabet. */
    static final class Names {
        /** Groups whose keys are names of the job's own choice. */
        private static final List<List<String>> GROUPS = List.of(List.of("plan", "items"), List.of("plan", "runs"),
                List.of("plan", "pass-throughs"), List.of("vehicle", "supply", "sources"), List.of("vehicle", "supply", "links"),
                List.of("vehicle", "zones"), List.of("vehicle", "places"), List.of("vehicle", "routes"), List.of("vehicle", "pass-throughs"),
                List.of("vehicle", "connectors"));
        /** Groups whose keys begin with such a name. */
        private static final List<List<String>> DOTTED = List.of(List.of("plan", "speaker-wiring"), List.of("plan", "pins"),
                List.of("plan", "settings"));
        /** Keys whose value is such a name, holds some or begins with one. */
        private static final Set<String> REFERENCES = Set.of("from", "to", "connected-to", "net", "place", "zone", "along", "through",
                "between", "open-to", "of", "zones", "signal-ground", "needs", "by", "enclosure", "space", "where", "microphones",
                "corrected-by", "feeds", "faults", "left-out", "unfinished", "band-above");
        private static final Pattern WORD = Pattern.compile("[a-z0-9-]+");

        private final Set<String> known = new TreeSet<>();

        Names(JobFiles files) {
            for (List<String> group : GROUPS) {
                Tree tree = files.tree(group.get(0));
                for (String step : group.subList(1, group.size())) {
                    tree = tree instanceof MapTree map ? map.get(step) : null;
                }
                if (tree instanceof MapTree map) {
                    known.addAll(map.entries().keySet());
                }
            }
        }

        JobFiles renamed(JobFiles files) {
            JobFiles result = files;
            for (String kind : List.of("plan", "vehicle", "readings")) {
                result = result.with(kind, (MapTree) renamed(files.tree(kind), List.of(kind)));
            }
            return result;
        }

        private Tree renamed(Tree tree, List<String> here) {
            String last = here.get(here.size() - 1);
            if (tree instanceof MapTree map) {
                Map<String, Entry> result = new LinkedHashMap<>();
                for (Entry entry : map.entries().values()) {
                    String key = GROUPS.contains(here) || DOTTED.contains(here) ? path(entry.key()) : entry.key();
                    List<String> below = new ArrayList<>(here);
                    below.add(entry.key());
                    result.put(key, new Entry(key, entry.keyAt(), renamed(entry.value(), below)));
                }
                return new MapTree(result, map.at());
            }
            if (tree instanceof ListTree list) {
                return new ListTree(list.items().stream().map(item -> renamed(item, here)).toList(), list.at());
            }
            ScalarTree scalar = (ScalarTree) tree;
            return REFERENCES.contains(last) ? new ScalarTree(path(scalar.text()), scalar.quoted(), scalar.at()) : scalar;
        }

        /** A path, net or list of words with every name in it renamed. */
        String path(String text) {
            Matcher words = WORD.matcher(text);
            return words.replaceAll(word -> known.contains(word.group()) && !isName(text, word) ? turned(word.group()) : word.group());
        }

        /** Whether a word after a dot names a terminal or a key, and not one of the job's own names. */
        private static boolean isName(String text, java.util.regex.MatchResult word) {
            if (word.start() == 0 || text.charAt(word.start() - 1) != '.') {
                return false;
            }
            String group = text.substring(0, word.start() - 1);
            return !group.endsWith(".band-above") && !List.of("items", "runs", "pass-throughs", "zones", "places", "routes", "connectors", "speaker-wiring", "pins", "settings",
                    "supply.sources", "supply.links").contains(group);
        }

        private static String turned(String name) {
            return new StringBuilder(name).reverse().toString();
        }
    }

    // units

    /** At most so many other units are known for one. */
    static final int MOST_UNITS = 3;
    private static final Pattern FIGURE = Pattern.compile("(-?[0-9]+(?:\\.[0-9]+)?) ?(\\S.*)");
    /** For each unit the others with the factor to them; all are exact. */
    private static final Map<String, Map<String, String>> FACTORS = Map.ofEntries(
            units("m", "mm", "1000", "cm", "100"), units("mm", "m", "0.001", "cm", "0.1"), units("cm", "mm", "10", "m", "0.01"),
            units("in", "mm", "25.4", "m", "0.0254"), units("ft", "in", "12", "m", "0.3048", "mm", "304.8"),
            units("V", "mV", "1000"), units("mV", "V", "0.001"), units("A", "mA", "1000"), units("mA", "A", "0.001"),
            units("ohm", "mohm", "1000", "Ω", "1"), units("mohm", "ohm", "0.001", "mΩ", "1"), units("W", "mW", "1000", "kW", "0.001"),
            units("kW", "W", "1000"), units("h", "min", "60", "s", "3600"), units("AWG", "ga", "1", "gauge", "1"), units("mm2", "mm²", "1"));

    private static Map.Entry<String, Map<String, String>> units(String unit, String... othersAndFactors) {
        Map<String, String> factors = new LinkedHashMap<>();
        for (int i = 0; i < othersAndFactors.length; i += 2) {
            factors.put(othersAndFactors[i], othersAndFactors[i + 1]);
        }
        return Map.entry(unit, factors);
    }

    /** A tree with every figure in another unit, exactly. */
    static Tree inOtherUnits(Tree tree, int choice, AtomicInteger rewritten) {
        if (tree instanceof MapTree map) {
            Map<String, Entry> entries = new LinkedHashMap<>();
            map.entries().forEach((key, entry) -> entries.put(key, new Entry(entry.key(), entry.keyAt(), inOtherUnits(entry.value(), choice, rewritten))));
            return new MapTree(entries, map.at());
        }
        if (tree instanceof ListTree list) {
            return new ListTree(list.items().stream().map(item -> inOtherUnits(item, choice, rewritten)).toList(), list.at());
        }
        String other = tree instanceof ScalarTree scalar ? inOtherUnit(scalar.text(), choice) : null;
        if (other == null) {
            return tree;
        }
        rewritten.incrementAndGet();
        return new ScalarTree(other, false, tree.at());
    }

    /** A figure in another unit, exactly; null where the text is no figure or no other unit is known. */
    private static String inOtherUnit(String text, int choice) {
        Matcher figure = FIGURE.matcher(text);
        if (!figure.matches()) {
            return null;
        }
        BigDecimal number = new BigDecimal(figure.group(1));
        if (figure.group(2).equals("°C")) {
            return number.multiply(new BigDecimal("1.8")).add(new BigDecimal("32")).stripTrailingZeros().toPlainString() + " °F";
        }
        Map<String, String> others = FACTORS.get(figure.group(2));
        if (others == null) {
            return null;
        }
        String unit = List.copyOf(others.keySet()).get(choice % others.size());
        return number.multiply(new BigDecimal(others.get(unit))).stripTrailingZeros().toPlainString() + " " + unit;
    }
}
