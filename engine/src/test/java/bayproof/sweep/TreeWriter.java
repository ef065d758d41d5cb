package bayproof.sweep;

import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;

/** Writes a tree as a file again, one value a line, each spelled as it was. */
public final class TreeWriter {
    private TreeWriter() {
    }

    public static String write(MapTree tree) {
        StringBuilder out = new StringBuilder();
        map(tree, "", out);
        return out.toString();
    }

    private static void map(MapTree tree, String indent, StringBuilder out) {
        for (Entry entry : tree.entries().values()) {
            out.append(indent).append(quoted(entry.key())).append(':');
            value(entry.value(), indent, out);
        }
    }

    private static void value(Tree tree, String indent, StringBuilder out) {
        if (tree instanceof ScalarTree scalar) {
            out.append(' ').append(scalar.quoted() ? quoted(scalar.text()) : scalar.text()).append('\n');
        } else if (tree instanceof MapTree map) {
            out.append(map.entries().isEmpty() ? " {}\n" : "\n");
            map(map, indent + "  ", out);
        } else {
            ListTree list = (ListTree) tree;
            out.append(list.items().isEmpty() ? " []\n" : "\n");
            for (Tree item : list.items()) {
                out.append(indent).append("  -");
                value(item, indent + "    ", out);
            }
        }
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
