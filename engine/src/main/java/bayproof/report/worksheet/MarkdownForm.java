package bayproof.report.worksheet;

import bayproof.report.Plain;
import java.util.List;
import java.util.stream.Collectors;

/** Pages as Markdown with tables; a printed page begins with each of them. */
public final class MarkdownForm {
    private static final String PAGE_BREAK = "<div style=\"page-break-before: always; break-before: page\"></div>\n\n";
    private static final String MARKS = "\\`*_{}[]<>#|~$&";

    private final StringBuilder text = new StringBuilder();
    private final String labels;

    private MarkdownForm(String labels) {
        this.labels = labels;
    }

    /**
     * The pages.
     *
     * @param title   name of the whole, the first line of its head
     * @param head    lines above the first page
     * @param running what stands at the top of each page beside its title
     * @param labels  file with the fuse labels at true size; null where there is none
     */
    public static String of(String title, List<Block> head, String running, List<Page> pages, String labels) {
        MarkdownForm form = new MarkdownForm(labels);
        form.text.append("# ").append(escaped(title)).append("\n\n");
        head.forEach(form::block);
        for (int i = 0; i < pages.size(); i++) {
            form.text.append(i == 0 ? "" : PAGE_BREAK).append("## ").append(escaped(pages.get(i).title())).append("\n\n")
                    .append(escaped("Page " + (i + 1) + " of " + pages.size() + ". " + running)).append("\n\n");
            pages.get(i).blocks().forEach(form::block);
        }
        return form.text.toString().stripTrailing() + "\n";
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            text.append("### ").append(escaped(heading.text())).append("\n\n");
        } else if (block instanceof Block.Words words) {
            text.append(words.label().isEmpty() ? "" : "**" + escaped(words.label()) + "** ").append(escaped(words.text())).append("\n\n");
        } else if (block instanceof Block.Step step) {
            text.append("**").append(step.number()).append(".** ").append(escaped(step.say())).append("\n\n");
            step.lines().forEach(line -> text.append("- ").append(escaped(line)).append('\n'));
            text.append(step.lines().isEmpty() ? "" : "\n");
        } else if (block instanceof Block.Labels each) {
            labels(each);
        } else {
            grid((Block.Grid) block);
        }
    }

    private void grid(Block.Grid grid) {
        row(grid.head(), -1);
        text.append("|").append(" --- |".repeat(grid.head().size())).append('\n');
        grid.rows().forEach(row -> row(row, grid.loud()));
        text.append('\n');
    }

    private void row(List<String> cells, int loud) {
        text.append('|');
        for (int i = 0; i < cells.size(); i++) {
            String cell = List.of(cells.get(i).split("\n", -1)).stream().map(MarkdownForm::escaped).collect(Collectors.joining("<br>"));
            text.append(' ').append(i == loud && !cell.isEmpty() ? "**" + cell + "**" : cell).append(" |");
        }
        text.append('\n');
    }

    private void labels(Block.Labels block) {
        if (labels != null) {
            text.append("![Fuse labels at true size](").append(labels).append(")\n\n");
        } else {
            grid(new Block.Grid(List.of("fuse", "rating", "second line", "third line"), block.labels().stream()
                    .map(label -> List.of(label.fuse(), label.rating(), label.guards(), FuseLabel.RULE + " " + label.tag())).toList()));
        }
    }

    /** The text so that no character of it is taken for markup, in one line. */
    static String escaped(String raw) {
        StringBuilder plain = new StringBuilder();
        String line = Plain.text(raw);
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            // A sign that begins a list or a heading line, and what would turn an address into a link.
            boolean begins = i == 0 && "-+=".indexOf(c) >= 0;
            boolean link = c == ':' && line.startsWith("://", i) || c == '.' && i >= 3 && line.substring(i - 3, i).equalsIgnoreCase("www") || c == '@';
            plain.append(MARKS.indexOf(c) >= 0 || begins || link ? "\\" : "").append(c);
        }
        return plain.toString().replaceFirst("^([0-9]+)([.)] )", "$1\\\\$2");
    }
}
