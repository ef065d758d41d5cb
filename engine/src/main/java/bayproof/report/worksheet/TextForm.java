package bayproof.report.worksheet;

import bayproof.report.Paper;
import bayproof.report.Plain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Pages as a terminal shows them, 80 columns wide. */
public final class TextForm {
    private static final String GAP = "  ";
    private static final int LEAST_COLUMN = 5;
    private static final int LABELS_ABREAST = 2;
    private static final int LABEL_WIDTH = 38;

    private final Paper paper = new Paper();

    private TextForm() {
    }

    /**
     * The pages, each below a line that says which it is.
     *
     * @param title   the first line
     * @param head    lines above the first page
     * @param running what stands at the top of each page beside its title
     */
    public static String of(String title, List<Block> head, String running, List<Page> pages) {
        TextForm form = new TextForm();
        form.paper.hanging("", title);
        head.forEach(form::block);
        for (int i = 0; i < pages.size(); i++) {
            form.paper.blank().across();
            form.paper.hanging("", pages.get(i).title() + "  page " + (i + 1) + " of " + pages.size() + "  " + running).blank();
            pages.get(i).blocks().forEach(form::block);
        }
        return form.paper.text();
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            paper.blank().line(ticked(heading.text()));
        } else if (block instanceof Block.Words words) {
            paper.hanging(words.label().isEmpty() ? "" : ticked(words.label()) + GAP, ticked(words.text()));
        } else if (block instanceof Block.Step step) {
            step(step);
        } else if (block instanceof Block.Labels labels) {
            labels(labels.labels());
        } else {
            grid((Block.Grid) block);
        }
    }

    private void step(Block.Step step) {
        String label = (step.number() < 10 ? " " : "") + step.number() + GAP;
        paper.blank().hanging(label, ticked(step.say()));
        for (String line : step.lines()) {
            paper.hanging(" ".repeat(label.length()), label.length() + 4, ticked(line));
        }
    }

    private static String ticked(String text) {
        return text.replace(Block.BOX, "[ ]");
    }

    // tables

    private void grid(Block.Grid grid) {
        List<List<List<String>>> rows = new ArrayList<>();
        int[] widths = widths(grid);
        rows.add(cells(grid.head(), widths));
        grid.rows().forEach(row -> rows.add(cells(row, widths)));
        boolean first = true;
        boolean tall = rows.stream().skip(1).anyMatch(row -> row.stream().anyMatch(cell -> cell.size() > 2));
        for (List<List<String>> row : rows) {
            int height = row.stream().mapToInt(List::size).max().orElse(0);
            for (int i = 0; i < height; i++) {
                StringBuilder line = new StringBuilder();
                for (int column = 0; column < row.size(); column++) {
                    String part = i < row.get(column).size() ? row.get(column).get(i) : "";
                    line.append(column == 0 ? "" : GAP).append(Plain.padded(part, widths[column]));
                }
                paper.row(line.toString());
            }
            if (first) {
                paper.row(rule(widths));
                first = false;
            } else if (tall) {
                paper.blank();
            }
        }
    }

    private static String rule(int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            line.append(i == 0 ? "" : GAP).append("-".repeat(widths[i]));
        }
        return line.toString();
    }

    /** As wide as the longest line of each column; where that is too wide, the widest columns give way. */
    private static int[] widths(Block.Grid grid) {
        int[] widths = new int[grid.head().size()];
        List<List<String>> rows = new ArrayList<>(grid.rows());
        rows.add(grid.head());
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                for (String line : lines(row.get(i))) {
                    widths[i] = Math.max(widths[i], Plain.length(line));
                }
            }
        }
        int room = Paper.WIDTH - GAP.length() * (widths.length - 1);
        while (Arrays.stream(widths).sum() > room) {
            int widest = 0;
            for (int i = 1; i < widths.length; i++) {
                widest = widths[i] > widths[widest] ? i : widest;
            }
            if (widths[widest] <= LEAST_COLUMN) {
                break;
            }
            widths[widest]--;
        }
        return widths;
    }

    private static List<String> lines(String cell) {
        return List.of(ticked(cell).split("\n", -1)).stream().map(Plain::text).toList();
    }

    private static List<List<String>> cells(List<String> row, int[] widths) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            List<String> wrapped = new ArrayList<>();
            for (String line : lines(row.get(i))) {
                wrap(line, widths[i], wrapped);
            }
            cells.add(wrapped);
        }
        return cells;
    }

    /** Breaks at a space where there is one, else behind a dot or a hyphen, else anywhere. */
    private static void wrap(String line, int width, List<String> into) {
        String rest = line;
        while (Plain.length(rest) > width) {
            int end = rest.offsetByCodePoints(0, width);
            int space = lastSpace(rest, end);
            int joint = Math.max(rest.lastIndexOf('.', end - 1), rest.lastIndexOf('-', end - 1)) + 1;
            int cut = space > 0 ? space : joint > 0 ? joint : end;
            into.add(rest.substring(0, cut).stripTrailing());
            rest = rest.substring(cut).stripLeading();
        }
        into.add(rest);
    }

    /** The last space at which a line may end: not between a number and its unit. */
    private static int lastSpace(String text, int end) {
        int space = text.lastIndexOf(' ', end);
        while (space > 0 && Character.isDigit(text.charAt(space - 1)) && space + 1 < text.length() && Character.isLetter(text.charAt(space + 1))) {
            space = text.lastIndexOf(' ', space - 1);
        }
        return space;
    }

    // labels

    private void labels(List<FuseLabel> labels) {
        for (int i = 0; i < labels.size(); i += LABELS_ABREAST) {
            List<List<String>> abreast = labels.subList(i, Math.min(labels.size(), i + LABELS_ABREAST)).stream().map(TextForm::label).toList();
            for (int line = 0; line < abreast.get(0).size(); line++) {
                int at = line;
                paper.row(String.join(GAP, abreast.stream().map(label -> label.get(at)).toList()));
            }
        }
    }

    private static List<String> label(FuseLabel label) {
        String edge = "+" + "-".repeat(LABEL_WIDTH - 2) + "+";
        return List.of(edge, inside(label.fuse(), label.rating()), inside(label.guards(), ""), inside(FuseLabel.RULE, label.tag()), edge);
    }

    private static String inside(String left, String right) {
        int room = LABEL_WIDTH - 4;
        String end = Plain.cut(Plain.text(right), room / 2);
        int leftRoom = room - (end.isEmpty() ? 0 : Plain.length(end) + 1);
        return "| " + Plain.padded(Plain.cut(Plain.text(left), leftRoom), room - Plain.length(end)) + end + " |";
    }
}
