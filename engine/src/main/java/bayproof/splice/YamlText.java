package bayproof.splice;

import bayproof.read.Tree;
import bayproof.read.Tree.MapTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.snakeyaml.engine.v2.common.ScalarStyle;

/**
 * Puts a value into the text of a YAML or JSON file, in the file's own style, and touches nothing else. What comes out is
 * read again: it must say what the file said and the new value, or nothing is changed.
 */
public final class YamlText {
    /** Lines longer than this are not made; a group in brackets goes on in the next line. */
    private static final int LONGEST = 140;
    private static final String MARK = "\uFEFF";

    private final String text;
    private final Style style;

    private YamlText(String text, Style style) {
        this.text = text;
        this.style = style;
    }

    /**
     * The text with a value put behind a row of keys. Only what is not given yet can be put: a key that is not there, or
     * one that says nothing, unknown or cannot-be-seen.
     *
     * @param text the file, with its byte order mark if it has one
     * @param name the file's name
     * @throws NotSpliced when it cannot be done without touching anything else
     */
    public static String put(String text, String name, List<String> keys, Tree value) throws NotSpliced {
        if (text.startsWith(MARK)) {
            return MARK + put(text.substring(1), name, keys, value);
        }
        MapTree before = read(text, name);
        Node root = Node.of(text);
        String after = Edit.made(text, new YamlText(text, Style.of(text, name.endsWith(".json"), root)).edits(root, keys, value, true));
        if (!Trees.same(Trees.with(before, keys, value), read(after, name))) {
            throw new NotSpliced("the file would not say the same otherwise");
        }
        return after;
    }

    /**
     * The text with a word put before all others of a list; the list may not be there yet.
     *
     * @throws NotSpliced when it cannot be done without touching anything else
     */
    public static String putFirst(String text, String name, String key, String word, Tree expected) throws NotSpliced {
        if (text.startsWith(MARK)) {
            return MARK + putFirst(text.substring(1), name, key, word, expected);
        }
        Node.Pair pair = Node.of(text).isMap() ? Node.of(text).pair(key) : null;
        if (pair == null || pair.value().isOpen()) {
            return put(text, name, List.of(key), expected);
        }
        Node list = pair.value();
        if (list.items() == null || list.items().isEmpty()) {
            throw new NotSpliced("\"" + key + "\" is not a list that another entry fits into");
        }
        Style style = Style.of(text, name.endsWith(".json"), Node.of(text));
        int first = list.items().get(0).from();
        String lead = text.substring(Style.lineStart(text, first), first);
        boolean ownLine = lead.isBlank() || !list.flow();
        String written = style.written(new Tree.ScalarTree(word, false, Trees.NOWHERE), true, (char) 0);
        String after = Edit.made(text, List.of(new Edit(first, first, written + (list.flow() ? "," : "") + (ownLine ? style.newline() + lead : " "))));
        if (!Trees.same(Trees.with(read(text, name), List.of(key), expected), read(after, name))) {
            throw new NotSpliced("the file would not say the same otherwise");
        }
        return after;
    }

    private static MapTree read(String text, String name) throws NotSpliced {
        try {
            return TreeReader.read(text.getBytes(StandardCharsets.UTF_8), name);
        } catch (UnusableInput e) {
            throw new NotSpliced("the file could not be read any more");
        }
    }

    private List<Edit> edits(Node map, List<String> keys, Tree value, boolean top) throws NotSpliced {
        if (!map.isMap()) {
            throw new NotSpliced("no group of keys stands where the value belongs");
        }
        Node.Pair pair = map.pair(keys.get(0));
        List<String> deeper = keys.subList(1, keys.size());
        if (pair == null) {
            return inserted(map, keys.get(0), deeper, value, top);
        }
        if (pair.value().isOpen()) {
            return List.of(replaced(pair, wrapped(deeper, value), map.flow()));
        }
        if (deeper.isEmpty()) {
            throw new NotSpliced("another value stands there already");
        }
        return edits(pair.value(), deeper, value, false);
    }

    private static Tree wrapped(List<String> keys, Tree value) {
        return Trees.with(null, keys, value);
    }

    private Edit replaced(Node.Pair pair, Tree value, boolean flow) {
        Node old = pair.value();
        char quote = quote(old);
        String written = style.written(value, flow, quote);
        if (old.from() < old.to()) {
            return new Edit(old.from(), old.to(), written);
        }
        boolean colon = text.substring(pair.key().to(), Math.max(pair.key().to(), old.from())).contains(":");
        return new Edit(old.from(), old.from(), (colon ? " " : ": ") + written);
    }

    private static char quote(Node node) {
        return node.style() == ScalarStyle.DOUBLE_QUOTED ? '"' : node.style() == ScalarStyle.SINGLE_QUOTED ? '\'' : 0;
    }

    // new keys

    private List<Edit> inserted(Node map, String key, List<String> deeper, Tree value, boolean top) throws NotSpliced {
        if (map.pairs().isEmpty()) {
            if (!map.flow()) {
                throw new NotSpliced("an empty group stands where the value belongs");
            }
            String pad = text.substring(map.from() + 1, map.to() - 1).isEmpty() ? " " : "";
            return List.of(new Edit(map.from() + 1, map.from() + 1, " " + pair(map, key, wrapped(deeper, value)) + pad));
        }
        return map.flow() ? intoFlow(map, pair(map, key, wrapped(deeper, value))) : List.of(intoBlock(map, key, deeper, value, top));
    }

    private String pair(Node map, String key, Tree value) {
        return style.key(key, neighbors(map.pairs().stream().map(Node.Pair::key).toList())) + ": "
                + style.written(value, map.flow(), neighbors(map.pairs().stream().map(Node.Pair::value).toList()));
    }

    /** The quote that all scalars of a row have; 0 where not all have the same. */
    private static char neighbors(List<Node> nodes) {
        List<Character> quotes = nodes.stream().filter(node -> node.text() != null && !node.text().matches("[0-9]+|true|false"))
                .map(YamlText::quote).distinct().toList();
        return quotes.size() == 1 ? quotes.get(0) : 0;
    }

    private List<Edit> intoFlow(Node map, String pair) {
        Node.Pair last = map.pairs().get(map.pairs().size() - 1);
        int end = last.to();
        int keyFrom = last.key().from();
        String lead = text.substring(Style.lineStart(text, keyFrom), keyFrom);
        if (map.pairs().size() > 1 && lead.isBlank() || lead.isBlank() && Style.lineEnd(text, end) < map.to() - 1) {
            return onOwnLine(map, end, lead, pair);
        }
        int length = Style.lineEnd(text, end) - Style.lineStart(text, end) + pair.length() + 2;
        boolean broken = !style.json() && length > LONGEST;
        String indent = " ".repeat(Style.column(text, map.pairs().get(0).key().from()));
        return List.of(new Edit(end, end, "," + (broken ? style.newline() + indent : " ") + pair));
    }

    /** Each key of the group begins a line; what stands behind the last one in its line, such as a comment, stays there. */
    private List<Edit> onOwnLine(Node map, int end, String lead, String pair) {
        int lineEnd = Style.lineEnd(text, end);
        boolean comma = text.substring(end, Math.min(lineEnd, map.to())).stripLeading().startsWith(",");
        if (lineEnd >= map.to() || lineEnd == end) {
            return List.of(new Edit(end, end, "," + style.newline() + lead + pair));
        }
        Edit more = new Edit(lineEnd, lineEnd, style.newline() + lead + pair);
        return comma ? List.of(more) : List.of(new Edit(end, end, ","), more);
    }

    private Edit intoBlock(Node map, String key, List<String> deeper, Tree value, boolean top) {
        Node.Pair last = map.pairs().get(map.pairs().size() - 1);
        int end = last.to();
        if (isBlockScalar(last.value())) {
            while (end > 0 && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
                end--;
            }
        }
        int keyFrom = map.pairs().get(0).key().from();
        String indent = text.substring(Style.lineStart(text, keyFrom), keyFrom).replaceAll("\\S", " ");
        int at = Style.lineEnd(text, end);
        if (deeper.isEmpty() || !opensBlock(map, top)) {
            return new Edit(at, at, style.newline() + indent + pair(map, key, wrapped(deeper, value)));
        }
        String below = style.newline() + indent + " ".repeat(style.step());
        return new Edit(at, at, style.newline() + indent + style.key(key, (char) 0) + ":" + below
                + style.key(deeper.get(0), (char) 0) + ": " + style.written(wrapped(deeper.subList(1, deeper.size()), value), false, (char) 0));
    }

    private static boolean isBlockScalar(Node node) {
        return node.style() == ScalarStyle.LITERAL || node.style() == ScalarStyle.FOLDED
                || node.isMap() && !node.flow() && !node.pairs().isEmpty() && isBlockScalar(node.pairs().get(node.pairs().size() - 1).value());
    }

    /** Whether a new group is written over several lines: as its neighbors are, and at the top of a file where none is there. */
    private static boolean opensBlock(Node map, boolean top) {
        List<Node> groups = map.pairs().stream().map(Node.Pair::value).filter(Node::isMap).toList();
        return groups.isEmpty() ? top : groups.stream().anyMatch(group -> !group.flow());
    }
}
