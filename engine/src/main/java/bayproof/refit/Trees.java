package bayproof.refit;

import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.vocabulary.At;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Trees that are made and not read. */
final class Trees {
    /** Where everything of a plan stands that is in no file yet. */
    static final At NEW = new At("the new plan", 1, 1);
    static final String UNKNOWN = "unknown";

    private Trees() {
    }

    static ScalarTree word(String text) {
        return new ScalarTree(text, false, NEW);
    }

    static ListTree list(Collection<String> words) {
        return new ListTree(words.stream().<Tree>map(Trees::word).toList(), NEW);
    }

    static MapTree empty() {
        return new MapTree(Map.of(), NEW);
    }

    /** The group, or an empty one where no group stands. */
    static MapTree map(Tree tree) {
        return tree instanceof MapTree map ? map : empty();
    }

    static String text(Tree tree) {
        return tree instanceof ScalarTree scalar ? scalar.text() : "";
    }

    /** The same group with some keys taken out. */
    static MapTree without(MapTree map, String... keys) {
        MapTree less = map;
        for (String key : keys) {
            less = less.without(key);
        }
        return less;
    }

    /** The value behind a row of keys taken out; where nothing stands there, nothing changes. */
    static MapTree without(MapTree map, List<String> path) {
        if (path.size() == 1) {
            return map.without(path.get(0));
        }
        return map.get(path.get(0)) instanceof MapTree inner ? map.with(path.get(0), without(inner, path.subList(1, path.size()))) : map;
    }

    /** A group from values in their order. */
    static MapTree group(Map<String, Tree> values) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        values.forEach((key, value) -> entries.put(key, new Entry(key, NEW, value)));
        return new MapTree(entries, NEW);
    }
}
