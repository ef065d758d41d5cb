package bayproof.sweep;

import bayproof.read.JobFiles;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.util.ArrayList;
import java.util.List;

/**
 * One value or entry in the files of a job, by the keys that lead to it; an item of a list by its number in brackets.
 *
 * @param kind kind of file
 */
record Spot(String kind, List<String> steps) {
    Spot {
        steps = List.copyOf(steps);
    }

    /** Every entry and value of a file, outermost first. */
    static List<Spot> all(JobFiles files, String kind) {
        List<Spot> spots = new ArrayList<>();
        collect(files.tree(kind), new Spot(kind, List.of()), spots);
        return spots;
    }

    private static void collect(Tree tree, Spot here, List<Spot> spots) {
        if (!here.steps.isEmpty()) {
            spots.add(here);
        }
        if (tree instanceof MapTree map) {
            map.entries().values().forEach(entry -> collect(entry.value(), here.child(entry.key()), spots));
        } else if (tree instanceof ListTree list) {
            for (int i = 0; i < list.items().size(); i++) {
                collect(list.items().get(i), here.child("[" + i + "]"), spots);
            }
        }
    }

    Spot child(String step) {
        List<String> more = new ArrayList<>(steps);
        more.add(step);
        return new Spot(kind, more);
    }

    boolean isUnder(String... first) {
        return steps.size() > first.length && steps.subList(0, first.length).equals(List.of(first));
    }

    /** The value that stands here, or null. */
    Tree in(JobFiles files) {
        Tree tree = files.tree(kind);
        for (String step : steps) {
            tree = tree instanceof MapTree map ? map.get(step) : ((ListTree) tree).items().get(number(step));
        }
        return tree;
    }

    /** The text that stands here; null where it is no single value. */
    String text(JobFiles files) {
        return in(files) instanceof ScalarTree scalar ? scalar.text() : null;
    }

    /** The files without what stands here. */
    JobFiles takenFrom(JobFiles files) {
        return files.with(kind, (MapTree) changed(files.tree(kind), steps, null));
    }

    /** The files with another text here. */
    JobFiles saying(JobFiles files, String text) {
        return holding(files, new ScalarTree(text, false, in(files).at()));
    }

    /** The files with another value here. */
    JobFiles holding(JobFiles files, Tree value) {
        return files.with(kind, (MapTree) changed(files.tree(kind), steps, value));
    }

    private static Tree changed(Tree tree, List<String> way, Tree value) {
        if (way.isEmpty()) {
            return value;
        }
        String step = way.get(0);
        List<String> rest = way.subList(1, way.size());
        if (tree instanceof MapTree map) {
            Entry entry = map.entries().get(step);
            Tree inner = changed(entry.value(), rest, value);
            return inner == null ? map.without(step) : map.with(step, inner);
        }
        List<Tree> items = new ArrayList<>(((ListTree) tree).items());
        Tree inner = changed(items.get(number(step)), rest, value);
        if (inner == null) {
            items.remove(number(step));
        } else {
            items.set(number(step), inner);
        }
        return new ListTree(items, tree.at());
    }

    private static int number(String step) {
        return Integer.parseInt(step.substring(1, step.length() - 1));
    }

    @Override
    public String toString() {
        return kind + "." + String.join(".", steps);
    }
}
