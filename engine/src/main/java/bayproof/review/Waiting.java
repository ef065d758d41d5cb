package bayproof.review;

import bayproof.demand.Outcome;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.read.DemoJob;
import bayproof.read.JobFiles;
import bayproof.read.Sheet;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.UnusableInput;
import bayproof.vocabulary.At;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Finds the rules that wait for a value by trying: the value is taken out of the clean demo job wherever it stands, for
 * every item of its kind, and the job is judged again. A value that the demo job writes in no such file is none that a
 * parts book or vehicle sheet is asked for: the plan says it.
 */
public final class Waiting {
    private static final String ANY = "*";

    /**
     * What becomes of the rules without a value.
     *
     * @param open    rules that then decide something otherwise, most often not at all
     * @param assumed rules that go on with a value taken from a window
     * @param always  whether the demo job writes the value in every entry of its group; where it does not, the plan or
     *                another entry may say the same
     * @param refused whether the reader refuses the demo job without it, because other values name it
     */
    public record Rules(List<RuleInfo> open, List<RuleInfo> assumed, boolean always, boolean refused) {
        public Rules {
            open = List.copyOf(open);
            assumed = List.copyOf(assumed);
        }

        /** Whether any rule asks for the value. */
        public boolean any() {
            return refused || !open.isEmpty() || !assumed.isEmpty();
        }
    }

    private final JobFiles demo = DemoJob.files();
    private final Map<String, Verdict> whole;
    private final Map<String, Optional<Rules>> known = new TreeMap<>();

    public Waiting() {
        try {
            whole = verdicts(demo);
        } catch (UnusableInput e) {
            throw new IllegalStateException("the demo job cannot be judged: " + e.getMessage(), e);
        }
    }

    /** The rules that wait for a value; null where the demo job writes it in no file of this kind. */
    public Rules of(Sheet.Gap gap) {
        return known.computeIfAbsent(gap.where() + " " + gap.pattern(), any -> Optional.ofNullable(rules(gap.where(), List.of(gap.pattern().split("\\.")))))
                .orElse(null);
    }

    private Rules rules(String where, List<String> keys) {
        JobFiles without = where.equals(Sheet.VEHICLE) ? withoutOfVehicle(keys) : withoutOfItems(where, keys);
        return without == null ? null : compared(without, isAlways(where, keys));
    }

    private boolean isAlways(String where, List<String> keys) {
        return where.equals(Sheet.VEHICLE) ? isInAll(demo.tree("vehicle"), keys)
                : map(demo.tree("parts").get("parts")).entries().values().stream().map(part -> map(part.value()))
                .filter(part -> isOfKind(part, where)).allMatch(part -> isInAll(part, keys));
    }

    private static boolean isOfKind(MapTree part, String kind) {
        return part.get("kind") instanceof ScalarTree word && word.text().equals(kind);
    }

    private static boolean isInAll(Tree tree, List<String> keys) {
        if (keys.isEmpty()) {
            return tree != null;
        }
        List<String> deeper = keys.subList(1, keys.size());
        return keys.get(0).equals(ANY) ? map(tree).entries().values().stream().allMatch(entry -> isInAll(entry.value(), deeper))
                : isInAll(map(tree).get(keys.get(0)), deeper);
    }

    /** The demo job without a value of its vehicle sheet; null where the sheet does not hold one. */
    private JobFiles withoutOfVehicle(List<String> keys) {
        MapTree sheet = demo.tree("vehicle");
        MapTree less = without(sheet, keys);
        return less == sheet ? null : demo.with("vehicle", less).withReadings(notOf("", keys));
    }

    /** The demo job without a value of all items of a kind; null where no part and no source of that kind holds one. */
    private JobFiles withoutOfItems(String kind, List<String> keys) {
        MapTree parts = map(demo.tree("parts").get("parts"));
        MapTree less = parts;
        Set<String> ofKind = new TreeSet<>();
        for (Entry part : parts.entries().values()) {
            if (isOfKind(map(part.value()), kind)) {
                ofKind.add(part.key());
                less = less.with(part.key(), without(map(part.value()), keys));
            }
        }
        if (parts.entries().entrySet().stream().noneMatch(one -> ofKind.contains(one.getKey()) && without(map(one.getValue().value()), keys) != one.getValue().value())) {
            return null;
        }
        MapTree plan = demo.tree("plan");
        MapTree vehicle = demo.tree("vehicle");
        MapTree supply = map(vehicle.get("supply"));
        return demo.with("parts", demo.tree("parts").with("parts", less))
                .with("plan", plan.with("items", withoutOf(ofKind, map(plan.get("items")), keys)))
                .with("vehicle", vehicle.with("supply", supply.with("sources", withoutOf(ofKind, map(supply.get("sources")), keys))))
                .withReadings(notOf("(items|supply\\.sources)\\.[^.]+\\.", keys));
    }

    private static MapTree withoutOf(Set<String> parts, MapTree items, List<String> keys) {
        MapTree less = items;
        for (Entry item : items.entries().values()) {
            MapTree own = map(item.value());
            if (own.get("part") instanceof ScalarTree part && parts.contains(part.text())) {
                less = less.with(item.key(), without(own, keys));
            }
        }
        return less;
    }

    /** A value that was measured stands whatever the files say, so its reading goes too. */
    private static Predicate<String> notOf(String owner, List<String> keys) {
        Pattern path = Pattern.compile(owner + String.join(".", keys).replace(".", "\\.").replace(ANY, "[^.]+"));
        return of -> !path.matcher(of).matches();
    }

    private static MapTree without(MapTree tree, List<String> keys) {
        List<String> deeper = keys.subList(1, keys.size());
        MapTree less = tree;
        for (Entry entry : tree.entries().values()) {
            if (!keys.get(0).equals(ANY) && !keys.get(0).equals(entry.key())) {
                continue;
            }
            if (deeper.isEmpty()) {
                less = less.without(entry.key());
            } else if (entry.value() instanceof MapTree inner && without(inner, deeper) != inner) {
                less = less.with(entry.key(), without(inner, deeper));
            }
        }
        return less;
    }

    private static MapTree map(Tree tree) {
        return tree instanceof MapTree map ? map : new MapTree(Map.of(), new At("", 1, 1));
    }

    private Rules compared(JobFiles without, boolean always) {
        Map<String, Verdict> left;
        try {
            left = verdicts(without);
        } catch (UnusableInput e) {
            return new Rules(List.of(), List.of(), always, true);
        }
        Set<RuleInfo> open = new TreeSet<>();
        Set<RuleInfo> assumed = new TreeSet<>();
        whole.forEach((key, before) -> {
            Verdict after = left.get(key);
            if (after == null || after.outcome() != before.outcome()) {
                open.add(before.rule());
            } else if (!windows(before).containsAll(windows(after))) {
                assumed.add(before.rule());
            }
        });
        left.values().stream().filter(verdict -> !whole.containsKey(verdict.key()) && verdict.outcome() != Outcome.HOLDS)
                .forEach(verdict -> open.add(verdict.rule()));
        assumed.removeAll(open);
        return new Rules(List.copyOf(open), List.copyOf(assumed), always, false);
    }

    private static Set<String> windows(Verdict verdict) {
        Set<String> names = new TreeSet<>();
        verdict.windows().forEach(window -> names.add(window.limit() + " " + window.path()));
        return names;
    }

    private static Map<String, Verdict> verdicts(JobFiles files) throws UnusableInput {
        Map<String, Verdict> byKey = new LinkedHashMap<>();
        Evaluation.of(files).judgment().verdicts().forEach(verdict -> byKey.put(verdict.key(), verdict));
        return byKey;
    }
}
