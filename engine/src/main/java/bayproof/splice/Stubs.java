package bayproof.splice;

import bayproof.read.JobFiles;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a new vehicle sheet must hold from its first line on: everything of the vehicle that the plan names already, with
 * nothing known of it.
 */
final class Stubs {
    private static final ScalarTree UNKNOWN = new ScalarTree("unknown", false, Trees.NOWHERE);

    private final Map<List<String>, Tree> stubs = new LinkedHashMap<>();

    private Stubs() {
    }

    /** Values by the keys that lead to them. */
    static Map<List<String>, Tree> of(JobFiles files) {
        Stubs all = new Stubs();
        MapTree plan = files.tree("plan");
        entries(plan.get("items")).forEach(item -> {
            all.add("places", word(get(item, "place")), "zone");
            all.add("spaces", word(get(item, "space")), "place");
        });
        entries(plan.get("runs")).forEach(run -> {
            words(get(run, "along")).forEach(id -> all.add("routes", id, "length"));
            words(get(run, "through")).forEach(id -> all.add("pass-throughs", id, "between"));
            entries(get(run, "near")).forEach(near -> all.add("keep-outs", near.key(), "kind"));
        });
        entries(plan.get("pass-throughs")).forEach(hole -> all.add("pass-throughs", hole.key(), "between"));
        entries(plan.get("pins")).forEach(pin -> all.pin(pin.key()));
        entries(plan.get("buses")).forEach(bus -> all.add("networks", bus.key(), "kind"));
        return all.stubs;
    }

    private void pin(String id) {
        int dot = id.indexOf('.');
        if (dot > 0) {
            stubs.put(List.of("connectors", id.substring(0, dot), "cavities", id.substring(dot + 1), "function"), UNKNOWN);
        }
    }

    private void add(String group, String id, String key) {
        if (id != null) {
            stubs.put(List.of(group, id, key), UNKNOWN);
        }
    }

    private static List<Entry> entries(Tree tree) {
        return tree instanceof MapTree map ? List.copyOf(map.entries().values()) : List.of();
    }

    private static Tree get(Entry entry, String key) {
        return entry.value() instanceof MapTree map ? map.get(key) : null;
    }

    private static String word(Tree tree) {
        return tree instanceof ScalarTree scalar && !scalar.isEmpty() && !List.of("unknown", "cannot-be-seen").contains(scalar.text())
                ? scalar.text() : null;
    }

    private static List<String> words(Tree tree) {
        List<String> words = new ArrayList<>();
        if (tree instanceof ListTree list) {
            list.items().forEach(item -> words.add(word(item)));
        }
        return words;
    }
}
