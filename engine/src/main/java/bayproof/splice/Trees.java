package bayproof.splice;

import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.vocabulary.At;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/** Trees compared and changed by what they say, wherever it stands. */
public final class Trees {
    static final At NOWHERE = new At("", 1, 1);

    private Trees() {
    }

    /** Whether two trees say the same: keys, their order, values. */
    public static boolean same(Tree one, Tree other) {
        if (one instanceof ScalarTree a && other instanceof ScalarTree b) {
            return a.text().equals(b.text()) && a.isEmpty() == b.isEmpty();
        }
        if (isNone(one) && isNone(other)) {
            return true;
        }
        if (one instanceof ListTree a && other instanceof ListTree b) {
            return a.items().size() == b.items().size() && all(a.items(), b.items());
        }
        return one instanceof MapTree a && other instanceof MapTree b && List.copyOf(a.entries().keySet()).equals(List.copyOf(b.entries().keySet()))
                && all(a.entries().values().stream().map(Tree.Entry::value).toList(), b.entries().values().stream().map(Tree.Entry::value).toList());
    }

    /** A list of nothing; a table writes it as a word. */
    private static boolean isNone(Tree tree) {
        return tree instanceof ListTree list ? list.items().isEmpty() : tree instanceof ScalarTree scalar && scalar.text().equals("none");
    }

    /** The same where the keys of a group may stand in any order. */
    static boolean sameInAnyOrder(Tree one, Tree other) {
        if (one instanceof MapTree a && other instanceof MapTree b) {
            return a.entries().keySet().equals(b.entries().keySet())
                    && a.entries().keySet().stream().allMatch(key -> sameInAnyOrder(a.get(key), b.get(key)));
        }
        return same(one, other);
    }

    private static boolean all(List<Tree> ones, List<Tree> others) {
        Iterator<Tree> other = others.iterator();
        return ones.stream().allMatch(one -> same(one, other.next()));
    }

    /** A tree with a value put behind a row of keys; groups that are not there are made, at the end. */
    public static Tree with(Tree tree, List<String> keys, Tree value) {
        if (keys.isEmpty()) {
            return value;
        }
        MapTree map = tree instanceof MapTree given ? given : new MapTree(Map.of(), NOWHERE);
        return map.with(keys.get(0), with(map.get(keys.get(0)), keys.subList(1, keys.size()), value));
    }
}
