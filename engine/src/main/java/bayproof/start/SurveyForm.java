package bayproof.start;

import bayproof.read.SurveyReader;
import bayproof.read.SurveyTable;
import bayproof.read.SurveyTable.Column;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeMap;

/** The form to take along to a vehicle, in Markdown: it reads well on paper, on a phone, and by the program. */
public final class SurveyForm {
    private static final int SPARE_ROWS = 3;

    private SurveyForm() {
    }

    /** The empty form. */
    public static String of(String vehicle) {
        StringBuilder form = new StringBuilder("# Vehicle survey: " + vehicle + "\n\n"
                + "Write into the cells; an empty cell is unknown and stays unknown. Take rows out that this vehicle\n"
                + "does not have, and add rows. Names: small letters, digits and hyphens. A figure carries its unit:\n"
                + "1.40 m, 55 in, 12.6 V, 50 mA. Two names in one cell stand with a space between.\n"
                + "An answer too: none, and cannot-be-seen where you looked and could not see it.\n\n"
                + "A battery post is live at all times. Never put a meter or a lamp on restraint wiring, which is often\n"
                + "yellow. The vehicle maker's procedure comes first.\n");
        values(form);
        SurveyTable.all().forEach(table -> table(form, table));
        return form.toString();
    }

    private static void values(StringBuilder form) {
        form.append("\n## ").append(SurveyReader.VALUES).append("\n\n");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("what", "value", "where it comes from"));
        SurveyTable.values().values().forEach(value -> rows.add(List.of(value.name(), "", value.says()
                + (value.words().isEmpty() ? "" : ": " + String.join(", ", value.words())))));
        table(form, rows, 12);
    }

    private static void table(StringBuilder form, SurveyTable table) {
        form.append("\n## ").append(table.heading()).append("\n\n").append(table.hint()).append("\n\n");
        for (Column column : table.columns()) {
            if (!column.words().isEmpty()) {
                form.append("- ").append(column.name()).append(": ").append(String.join(", ", column.words())).append('\n');
            }
        }
        if (table.columns().stream().anyMatch(column -> !column.words().isEmpty())) {
            form.append('\n');
        }
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>(List.of(SurveyTable.ID));
        table.columns().forEach(column -> header.add(column.name()));
        rows.add(header);
        rows.addAll(table.rows());
        rows.addAll(Collections.nCopies(SPARE_ROWS, List.of()));
        table(form, rows, 0);
    }

    private static void table(StringBuilder form, List<List<String>> rows, int secondAtLeast) {
        TreeMap<Integer, Integer> widths = new TreeMap<>();
        rows.forEach(row -> {
            for (int i = 0; i < row.size(); i++) {
                widths.merge(i, Math.max(row.get(i).length(), i == 1 ? secondAtLeast : 0), Math::max);
            }
        });
        for (int line = 0; line < rows.size(); line++) {
            for (int i = 0; i < rows.get(0).size(); i++) {
                String cell = i < rows.get(line).size() ? rows.get(line).get(i) : "";
                form.append("| ").append(cell).append(" ".repeat(widths.get(i) - cell.length() + 1));
            }
            form.append("|\n");
            if (line == 0) {
                widths.values().forEach(width -> form.append('|').append("-".repeat(width + 2)));
                form.append("|\n");
            }
        }
    }
}
