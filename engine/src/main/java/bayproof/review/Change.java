package bayproof.review;

import bayproof.read.JobFiles;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.Tree;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One value, or one whole group, that differs between the files of two jobs.
 *
 * @param kind   kind of file it stands in
 * @param path   keys that lead to it
 * @param before what stood there; null where nothing did
 * @param after  what stands there; null where nothing does
 */
public record Change(String kind, List<String> path, Tree before, Tree after) {
    public Change {
        path = List.copyOf(path);
    }

    /** All changes from one job to the other, in the order of the files. How a value is spelled counts, where it stands does not. */
    static List<Change> between(JobFiles before, JobFiles after) {
        List<Change> changes = new ArrayList<>();
        for (String kind : JobFiles.KINDS) {
            collect(kind, List.of(), before.tree(kind), after.tree(kind), changes);
        }
        return changes;
    }

    private static void collect(String kind, List<String> path, Tree before, Tree after, List<Change> changes) {
        if (before instanceof MapTree was && after instanceof MapTree is) {
            Set<String> keys = new LinkedHashSet<>(is.entries().keySet());
            keys.addAll(was.entries().keySet());
            for (String key : keys) {
                List<String> deeper = new ArrayList<>(path);
                deeper.add(key);
                collect(kind, deeper, was.get(key), is.get(key), changes);
            }
        } else if (!text(before).equals(text(after))) {
            changes.add(new Change(kind, path, before, after));
        }
    }

    /** The path as it is written in one line; of any other file than the plan with the file's kind before it. */
    public String dotted() {
        return (kind.equals("plan") ? "" : kind + ": ") + String.join(".", path);
    }

    public String was() {
        return text(before);
    }

    public String is() {
        return text(after);
    }

    /** A value as it is written in one line. */
    private static String text(Tree tree) {
        if (tree == null) {
            return "nothing";
        }
        if (tree instanceof ScalarTree scalar) {
            return scalar.isEmpty() ? "empty" : scalar.text();
        }
        if (tree instanceof ListTree list) {
            return list.items().stream().map(Change::text).collect(Collectors.joining(", ", "[", "]"));
        }
        return ((MapTree) tree).entries().values().stream().map(entry -> entry.key() + ": " + text(entry.value()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /** Files with this change made. */
    JobFiles made(JobFiles files) {
        return put(files, after);
    }

    /** Files with this change taken back. */
    JobFiles undone(JobFiles files) {
        return put(files, before);
    }

    private JobFiles put(JobFiles files, Tree value) {
        return files.with(kind, (MapTree) put(files.tree(kind), 0, value));
    }

    private Tree put(Tree tree, int depth, Tree value) {
        if (depth == path.size()) {
            return value;
        }
        MapTree map = tree instanceof MapTree given ? given : new MapTree(Map.of(), (before == null ? after : before).at());
        String key = path.get(depth);
        Tree inner = put(map.get(key), depth + 1, value);
        return inner == null ? map.without(key) : map.with(key, inner);
    }
}
