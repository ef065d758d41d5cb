package bayproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lines of at most {@value #WIDTH} characters; longer text is wrapped between words, and a longer word is broken. */
public final class Paper {
    /** Width in characters. */
    public static final int WIDTH = 80;

    /** A space, unless a number stands before it and its unit behind it. */
    private static final Pattern BETWEEN_WORDS = Pattern.compile("(?!(?<=[0-9]) (?:%|°[CF]|AWG|[cm]?m[23]?|in[23]?|ft[23]?|lb|oz|m?A|m?V|m?ohm|W|h|min|m?s|k?Hz|L)(?![\\p{L}0-9])) ");

    private final List<String> lines = new ArrayList<>();

    /** Adds one paragraph; the spaces it begins with indent all of it. */
    public Paper line(String text) {
        return hanging(" ".repeat(text.length() - text.stripLeading().length()), text);
    }

    /** Adds an empty line, unless there is none above or the line above is empty. */
    public Paper blank() {
        if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
            lines.add("");
        }
        return this;
    }

    /** Adds a line across the page. */
    public Paper across() {
        lines.add("-".repeat(WIDTH));
        return this;
    }

    /** Adds a paragraph behind a label; further lines begin below the paragraph's first word. */
    public Paper hanging(String label, String text) {
        return hanging(label, Plain.length(label), text);
    }

    /** Adds a paragraph behind a label; further lines are indented by {@code indent}. */
    public Paper hanging(String label, int indent, String text) {
        String margin = " ".repeat(indent);
        StringBuilder current = new StringBuilder(label);
        boolean begun = false;
        for (String word : BETWEEN_WORDS.split(Plain.text(text))) {
            String rest = word;
            if (begun && Plain.length(current.toString()) + 1 + Plain.length(rest) > WIDTH) {
                add(current);
                current = new StringBuilder(margin);
                begun = false;
            }
            while (Plain.length(current.toString()) + Plain.length(rest) > WIDTH) {
                int room = rest.offsetByCodePoints(0, Math.max(1, WIDTH - Plain.length(current.toString())));
                current.append(rest, 0, room);
                add(current);
                current = new StringBuilder(margin);
                rest = rest.substring(room);
            }
            current.append(begun ? " " : "").append(rest);
            begun = true;
        }
        add(current);
        return this;
    }

    /** Adds parts two spaces apart, as many to a line as fit whole. */
    public Paper parts(int indent, List<String> parts) {
        String margin = " ".repeat(indent);
        String current = "";
        for (String part : parts) {
            String plain = Plain.text(part);
            if (plain.isEmpty()) {
                continue;
            }
            if (!current.isEmpty() && indent + Plain.length(current) + 2 + Plain.length(plain) > WIDTH) {
                hangingAsIs(margin, current);
                current = "";
            }
            current += (current.isEmpty() ? "" : "  ") + plain;
        }
        return hangingAsIs(margin, current);
    }

    private Paper hangingAsIs(String margin, String text) {
        return Plain.length(margin + text) <= WIDTH ? row(margin + text) : hanging(margin, text);
    }

    /** Adds a line as it stands, cut at the width: for columns. */
    public Paper row(String text) {
        int length = Math.min(WIDTH, Plain.length(text));
        lines.add(text.substring(0, text.offsetByCodePoints(0, length)).stripTrailing());
        return this;
    }

    private void add(StringBuilder line) {
        lines.add(line.toString().stripTrailing());
    }

    /** Adds the lines of another paper. */
    public Paper all(Paper other) {
        lines.addAll(other.lines);
        return this;
    }

    public int height() {
        return lines.size();
    }

    public List<String> lines() {
        return List.copyOf(lines);
    }

    /** The lines, each ended by a line feed. */
    public String text() {
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }
}
