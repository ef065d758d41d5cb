package bayproof.bench;

import bayproof.read.JobFiles;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * The tour van several times over in one vehicle: every item, run and speaker is there once a copy; batteries and the converter
 * between them are shared, and each copy draws its share of the current.
 */
final class LargerVan {
    private static final List<String> COPIED = List.of("items", "runs", "speaker-wiring");
    /** Sources and their fuses: more of these would be another vehicle, not a larger job. */
    private static final Set<String> SHARED = Set.of("conv-fuse", "converter", "conv-out-fuse", "house-link-fuse", "house-battery");
    private static final Set<String> DIVIDED = Set.of("rated-output", "idle-draw", "draw");
    private static final Pattern NAME = Pattern.compile("[a-z0-9-]+");

    private LargerVan() {
    }

    /**
     * The van with everything in it several times.
     *
     * @param copies how often, 1 for the van as it is
     */
    static JobFiles of(JobFiles van, int copies) {
        MapTree plan = van.tree("plan");
        Set<String> names = new TreeSet<>();
        for (String group : COPIED) {
            names.addAll(((MapTree) plan.get(group)).entries().keySet());
        }
        names.removeAll(SHARED);
        for (String group : COPIED) {
            Map<String, Entry> all = new LinkedHashMap<>(((MapTree) plan.get(group)).entries());
            for (int copy = 2; copy <= copies; copy++) {
                String suffix = "-" + copy;
                for (Entry entry : ((MapTree) plan.get(group)).entries().values()) {
                    String key = renamed(entry.key(), names, suffix);
                    if (!key.equals(entry.key()) && !isOfSources(entry)) {
                        all.put(key, new Entry(key, entry.keyAt(), renamed(entry.value(), names, suffix)));
                    }
                }
            }
            plan = plan.with(group, new MapTree(all, plan.get(group).at()));
        }
        return van.with("plan", plan).with("parts", (MapTree) divided(van.tree("parts"), copies));
    }

    /** Whether a run leads from one shared item or battery to another, or is the return of one. */
    private static boolean isOfSources(Entry entry) {
        if (!(entry.value() instanceof MapTree run) || !(run.get("from") instanceof ScalarTree from) || !(run.get("to") instanceof ScalarTree to)) {
            return false;
        }
        return isShared(from.text()) && isShared(to.text()) || isReturn(from.text()) || isReturn(to.text());
    }

    private static boolean isReturn(String terminal) {
        return isShared(terminal) && (terminal.endsWith(".common") || terminal.endsWith(".negative"));
    }

    private static boolean isShared(String terminal) {
        String item = terminal.split("\\.")[0];
        return SHARED.contains(item) || item.endsWith("-battery");
    }

    private static Tree renamed(Tree tree, Set<String> names, String suffix) {
        if (tree instanceof ScalarTree scalar) {
            return new ScalarTree(renamed(scalar.text(), names, suffix), scalar.quoted(), scalar.at());
        }
        if (tree instanceof ListTree list) {
            return new ListTree(list.items().stream().map(item -> renamed(item, names, suffix)).toList(), list.at());
        }
        MapTree map = (MapTree) tree;
        Map<String, Entry> entries = new LinkedHashMap<>();
        map.entries().values().forEach(entry -> entries.put(entry.key(), new Entry(entry.key(), entry.keyAt(), renamed(entry.value(), names, suffix))));
        return new MapTree(entries, map.at());
    }

    private static String renamed(String text, Set<String> names, String suffix) {
        return NAME.matcher(text).replaceAll(match -> names.contains(match.group()) ? match.group() + suffix : match.group());
    }

    private static Tree divided(Tree tree, int copies) {
        if (!(tree instanceof MapTree map)) {
            return tree;
        }
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (Entry entry : map.entries().values()) {
            Tree value = DIVIDED.contains(entry.key()) && entry.value() instanceof ScalarTree scalar ? share(scalar, copies)
                    : divided(entry.value(), copies);
            entries.put(entry.key(), new Entry(entry.key(), entry.keyAt(), value));
        }
        return new MapTree(entries, map.at());
    }

    private static ScalarTree share(ScalarTree scalar, int copies) {
        List<String> words = new ArrayList<>(List.of(scalar.text().split(" ")));
        words.set(0, new BigDecimal(words.get(0)).divide(BigDecimal.valueOf(copies), MathContext.DECIMAL32).toPlainString());
        return new ScalarTree(String.join(" ", words), scalar.quoted(), scalar.at());
    }
}
