package bayproof.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What changes in a text, line by line, each line shown around the place where it changes. */
public final class DiffPage {
    private static final int AROUND = 26;

    private final List<String> before;
    private final List<String> after;
    private final Paper page;
    private final String file;

    private DiffPage(String file, String before, String after, Paper page) {
        this.file = file;
        this.before = lines(before);
        this.after = lines(after);
        this.page = page;
    }

    /**
     * Adds the changes of one file to a page.
     *
     * @param before what it said; empty for a new file
     */
    public static void add(Paper page, String file, String before, String after) {
        page.blank().line(Plain.text(file) + (before.isEmpty() ? "  (new)" : ""));
        new DiffPage(file, before, after, page).write();
    }

    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\r\n|\n|\r", -1)));
        if (lines.get(lines.size() - 1).isEmpty()) {
            lines.remove(lines.size() - 1);
        }
        return lines;
    }

    /** Lines of the longest row that both texts share stand still; those between are taken out and put in. */
    private void write() {
        int[][] shared = new int[before.size() + 1][after.size() + 1];
        for (int i = before.size() - 1; i >= 0; i--) {
            for (int j = after.size() - 1; j >= 0; j--) {
                shared[i][j] = before.get(i).equals(after.get(j)) ? shared[i + 1][j + 1] + 1 : Math.max(shared[i + 1][j], shared[i][j + 1]);
            }
        }
        int i = 0;
        int j = 0;
        while (i < before.size() || j < after.size()) {
            if (i < before.size() && j < after.size() && before.get(i).equals(after.get(j))) {
                i++;
                j++;
                continue;
            }
            int out = i;
            int in = j;
            while (i < before.size() && (j == after.size() || shared[i + 1][j] >= shared[i][j + 1]) && !(j < after.size() && before.get(i).equals(after.get(j)))) {
                i++;
            }
            while (j < after.size() && (i == before.size() || !before.get(i).equals(after.get(j)))) {
                j++;
            }
            block(before.subList(out, i), after.subList(in, j), in);
        }
    }

    private void block(List<String> out, List<String> in, int number) {
        int pairs = Math.min(out.size(), in.size());
        for (int k = 0; k < pairs; k++) {
            changed(out.get(k), in.get(k), number + k + 1);
        }
        out.subList(pairs, out.size()).forEach(line -> row("  -  ", "", line));
        for (int k = pairs; k < in.size(); k++) {
            row(label(number + k + 1) + "+  ", "", in.get(k));
        }
    }

    private static String label(int number) {
        return String.format("%4d ", number);
    }

    private void changed(String was, String is, int number) {
        int most = Math.min(was.length(), is.length());
        int from = 0;
        while (from < most && was.charAt(from) == is.charAt(from)) {
            from++;
        }
        int behind = 0;
        while (behind < most - from && was.charAt(was.length() - 1 - behind) == is.charAt(is.length() - 1 - behind)) {
            behind++;
        }
        int begin = wordStart(is, Math.max(0, from - AROUND));
        String lead = begin > 0 ? "..." : "";
        row(label(number) + "-  ", lead, around(was, begin, was.length() - behind));
        row(" ".repeat(5) + "+  ", lead, around(is, begin, is.length() - behind));
    }

    private static int wordStart(String line, int from) {
        int space = line.indexOf(' ', from);
        return from == 0 || space < 0 || space > from + AROUND / 2 ? from : space + 1;
    }

    private static String around(String line, int begin, int end) {
        int until = Math.min(line.length(), end + AROUND);
        return line.substring(Math.min(begin, line.length()), until) + (until < line.length() ? "..." : "");
    }

    private void row(String label, String lead, String line) {
        String plain = Plain.text(line);
        String indent = lead.isEmpty() ? " ".repeat(Math.min(20, line.length() - line.stripLeading().length())) : "";
        page.hanging(label + indent + lead, label.length() + 2, plain);
    }
}
