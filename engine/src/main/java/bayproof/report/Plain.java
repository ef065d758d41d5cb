package bayproof.report;

import bayproof.read.Sizes;
import java.util.Locale;

/** Text as a terminal may show it. Whatever a job's files hold, nothing in it may act on the terminal. */
public final class Plain {
    private Plain() {
    }

    /**
     * The text in one line: line breaks and tabs become spaces, and every character that a terminal acts on instead of
     * showing (control characters, marks that turn the direction of writing, halves of a pair) becomes a question mark.
     */
    public static String text(String raw) {
        StringBuilder plain = new StringBuilder(raw.length());
        raw.codePoints().forEach(point -> {
            if (Character.isWhitespace(point) || point == 0x85) {
                plain.append(' ');
            } else {
                plain.appendCodePoint(isShown(point) ? point : '?');
            }
        });
        return plain.toString().strip();
    }

    private static boolean isShown(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED,
                 Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }

    /** Length in characters as people count them, code points. */
    public static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    /** The text, cut after a whole word with three dots where it is longer than {@code most} characters. */
    public static String cut(String text, int most) {
        if (length(text) <= most) {
            return text;
        }
        int end = text.offsetByCodePoints(0, Math.max(0, most - 3));
        int space = text.lastIndexOf(' ', end);
        String kept = text.substring(0, space > end / 2 ? space : end);
        return kept.replaceAll("[\\s,;:(]+$", "") + "...";
    }

    /** The text, shortened to whole clauses where it is longer than {@code most} characters, otherwise cut. */
    public static String clause(String text, int most) {
        String kept = text;
        while (length(kept) > most) {
            int end = Math.max(kept.lastIndexOf(", "), kept.lastIndexOf("; "));
            if (end < 0) {
                return cut(text, most);
            }
            kept = kept.substring(0, end);
        }
        return kept;
    }

    /** The text filled up with spaces to a width. */
    public static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - length(text)));
    }

    /** With a capital at the beginning, unless its first word is a name that the files use. */
    public static String capital(String text) {
        int end = 0;
        while (end < text.length() && Character.isLetter(text.charAt(end))) {
            end++;
        }
        boolean word = end > 0 && (end == text.length() || text.charAt(end) == ' ' || text.charAt(end) == ',' || text.charAt(end) == ':');
        return word ? text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) : text;
    }

    /** With a period at the end, and cable sizes both ways. */
    public static String sentence(String text) {
        String capital = Sizes.bothWays(capital(text));
        return capital.endsWith(".") || capital.endsWith("?") ? capital : capital + ".";
    }

    /** A number with its noun: "1 fact", "3 facts". */
    public static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
