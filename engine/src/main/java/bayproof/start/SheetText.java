package bayproof.start;

import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A file as text that was made and not read. */
public final class SheetText {
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 ./%°-]*");

    private SheetText() {
    }

    /** The text of a sheet; groups that hold only values stand on one line. */
    public static String of(MapTree sheet, String vehicle) {
        return of("Vehicle sheet of " + vehicle + ", from its survey form. What nobody filled in says unknown.", sheet, List.of());
    }

    /**
     * The text of any file, below a comment.
     *
     * @param wide groups whose entries stand on one line each, however much they hold
     */
    public static String of(String comment, MapTree file, List<String> wide) {
        StringBuilder text = new StringBuilder("# ").append(comment.replaceAll("\\p{Cntrl}", " ")).append('\n');
        for (Entry entry : file.entries().values()) {
            if (wide.contains(entry.key()) && entry.value() instanceof MapTree map && !map.entries().isEmpty()) {
                text.append(entry.key()).append(":\n");
                map.entries().values().forEach(one -> text.append("  ").append(one.key()).append(": ").append(inline(one.value())).append('\n'));
            } else {
                entry(text, entry, "");
            }
        }
        return text.toString();
    }

    private static void entry(StringBuilder text, Entry entry, String indent) {
        text.append(indent).append(entry.key()).append(':');
        if (entry.value() instanceof MapTree map && (indent.isEmpty() || map.entries().values().stream().anyMatch(one -> one.value() instanceof MapTree))) {
            text.append('\n');
            map.entries().values().forEach(one -> entry(text, one, indent + "  "));
        } else {
            text.append(' ').append(inline(entry.value())).append('\n');
        }
    }

    private static String inline(Tree tree) {
        if (tree instanceof MapTree map) {
            return map.entries().isEmpty() ? "{}" : map.entries().values().stream().map(one -> one.key() + ": " + inline(one.value()))
                    .collect(Collectors.joining(", ", "{ ", " }"));
        }
        if (tree instanceof ListTree list) {
            return list.items().isEmpty() ? "[]" : list.items().stream().map(SheetText::inline).collect(Collectors.joining(", ", "[ ", " ]"));
        }
        String value = ((ScalarTree) tree).text();
        return PLAIN.matcher(value).matches() && !value.endsWith(" ") ? value : YamlText.quoted(value);
    }
}
