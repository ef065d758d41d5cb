package bayproof.report;

import java.util.regex.Pattern;

/** Prints the little markup that cards use: paragraphs, lists and tables. */
final class Markup {
    private static final Pattern ITEM = Pattern.compile("(?:[-*]|[0-9]+\\.) .*");

    private Markup() {
    }

    /** Adds a text to a page, indented. */
    static void print(Paper page, String text, int indent) {
        String margin = " ".repeat(indent);
        StringBuilder paragraph = new StringBuilder();
        for (String line : (text + "\n").split("\n", -1)) {
            String bare = line.strip().replace("**", "").replace("`", "");
            boolean item = ITEM.matcher(bare).matches();
            if (bare.isEmpty() || item || bare.startsWith("|")) {
                flush(page, margin, paragraph);
            }
            if (bare.startsWith("|")) {
                page.line(margin + bare);
            } else if (!bare.isEmpty()) {
                paragraph.append(paragraph.isEmpty() ? "" : " ").append(bare);
            }
        }
        flush(page, margin, paragraph);
    }

    private static void flush(Paper page, String margin, StringBuilder paragraph) {
        if (!paragraph.isEmpty()) {
            String text = paragraph.toString();
            int label = ITEM.matcher(text).matches() ? text.indexOf(' ') + 1 : 0;
            page.hanging(margin + text.substring(0, label), text.substring(label));
            paragraph.setLength(0);
        }
    }
}
