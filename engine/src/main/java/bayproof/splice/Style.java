package bayproof.splice;

import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.common.ScalarStyle;

/**
 * How a file writes its values.
 *
 * @param json    whether it is JSON
 * @param quote   the quote for a value that needs one
 * @param newline how its lines end
 * @param step    blanks by which a group is indented
 */
record Style(boolean json, char quote, String newline, int step) {
    /** Of a new file. */
    static final Style PLAIN = new Style(false, '"', "\n", 2);
    private static final Pattern WHOLE_OR_TRUTH = Pattern.compile("0|[1-9][0-9]{0,8}|true|false");
    private static final Pattern PLAIN_BEGIN = Pattern.compile("[^\\s\\-?:,\\[\\]{}#&*!|>'\"%@`].*|-[^\\s,\\[\\]{}].*");
    private static final List<String> NOTHING = List.of("", "~", "null");

    static Style of(String text, boolean json, Node root) {
        int line = text.indexOf('\n');
        String newline = line > 0 && text.charAt(line - 1) == '\r' ? "\r\n" : line < 0 && text.indexOf('\r') >= 0 ? "\r" : "\n";
        return new Style(json, json || !isFirstQuoteSingle(root) ? '"' : '\'', newline, step(text, root));
    }

    private static boolean isFirstQuoteSingle(Node node) {
        ScalarStyle first = firstQuoted(node);
        return first == ScalarStyle.SINGLE_QUOTED;
    }

    private static ScalarStyle firstQuoted(Node node) {
        if (node.text() != null) {
            return node.style() == ScalarStyle.SINGLE_QUOTED || node.style() == ScalarStyle.DOUBLE_QUOTED ? node.style() : null;
        }
        List<Node> children = node.isMap() ? node.pairs().stream().map(Node.Pair::value).toList() : node.items();
        for (Node child : children) {
            ScalarStyle found = firstQuoted(child);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    /** The indentation of the first group in block style; two blanks where there is none. */
    private static int step(String text, Node root) {
        for (Node.Pair pair : root.isMap() ? root.pairs() : List.<Node.Pair>of()) {
            Node value = pair.value();
            if (value.isMap() && !value.flow() && !value.pairs().isEmpty()) {
                return Math.max(1, column(text, value.pairs().get(0).key().from()) - column(text, pair.key().from()));
            }
        }
        return 2;
    }

    /** How many characters of its line stand before a place. */
    static int column(String text, int place) {
        return place - lineStart(text, place);
    }

    static int lineStart(String text, int place) {
        return Math.max(text.lastIndexOf('\n', place - 1), text.lastIndexOf('\r', place - 1)) + 1;
    }

    /** Where the line of a place ends, before its break. */
    static int lineEnd(String text, int place) {
        int end = place;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    /**
     * A value in one line.
     *
     * @param flow whether it stands in brackets, where commas and brackets of its own must be quoted
     * @param like the quote its neighbors have; 0 where they have none
     */
    String written(Tree value, boolean flow, char like) {
        if (value instanceof ScalarTree scalar) {
            return scalar(scalar, flow, like);
        }
        if (value instanceof ListTree list) {
            return list.items().isEmpty() ? "[]" : list.items().stream().map(item -> written(item, true, (char) 0))
                    .collect(Collectors.joining(", ", json ? "[" : "[ ", json ? "]" : " ]"));
        }
        MapTree map = (MapTree) value;
        return map.entries().isEmpty() ? "{}" : map.entries().values().stream()
                .map(entry -> key(entry.key(), (char) 0) + ": " + written(entry.value(), true, (char) 0))
                .collect(Collectors.joining(", ", "{ ", " }"));
    }

    String key(String key, char like) {
        return json || like != 0 ? quoted(key, json ? '"' : like) : isPlain(key, true) ? key : quoted(key, quote);
    }

    private String scalar(ScalarTree scalar, boolean flow, char like) {
        String text = scalar.text();
        if (!scalar.quoted() && WHOLE_OR_TRUTH.matcher(text).matches()) {
            return text;
        }
        if (json || like != 0) {
            return quoted(text, json ? '"' : like);
        }
        return isPlain(text, flow) && !(scalar.quoted() && NOTHING.contains(text)) ? text : quoted(text, quote);
    }

    private static boolean isPlain(String text, boolean flow) {
        return PLAIN_BEGIN.matcher(text).matches() && text.equals(text.strip()) && !text.contains(": ") && !text.contains(" #") && !text.endsWith(":")
                && text.chars().noneMatch(c -> c < ' ' || c == 0x7F || c == 0xFEFF || c == 0x85 || c == 0x2028 || c == 0x2029)
                && !(flow && text.chars().anyMatch(c -> ",[]{}".indexOf(c) >= 0)) && !NOTHING.contains(text);
    }

    private static String quoted(String text, char quote) {
        if (quote == '\'' && text.chars().noneMatch(c -> c < ' ')) {
            return "'" + text.replace("'", "''") + "'";
        }
        StringBuilder quoted = new StringBuilder("\"");
        text.chars().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append((char) c);
            } else if (c < ' ' || c == 0x7F || c == 0x85 || c == 0xFEFF || c == 0x2028 || c == 0x2029) {
                quoted.append(String.format("\\u%04x", c));
            } else {
                quoted.append((char) c);
            }
        });
        return quoted.append('"').toString();
    }
}
