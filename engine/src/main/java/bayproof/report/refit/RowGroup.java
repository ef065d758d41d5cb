package bayproof.report.refit;

import bayproof.refit.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Things of one kind that fare alike for one reason.
 *
 * @param why the reason in words
 */
record RowGroup(String kind, List<Row> rows, String why) {
    RowGroup {
        rows = List.copyOf(rows);
    }

    /** Rows that say the same, in the order of the first of each. */
    static List<RowGroup> of(List<Row> rows, RowText words) {
        Map<String, List<Row>> alike = new LinkedHashMap<>();
        rows.forEach(row -> alike.computeIfAbsent(row.kind() + "\n" + words.why(row), any -> new ArrayList<>()).add(row));
        return alike.values().stream().map(some -> new RowGroup(some.get(0).kind(), some, words.why(some.get(0)))).toList();
    }

    /** Every name; of a single thing with what it serves for. */
    String names() {
        return rows.size() == 1 ? RowText.name(rows.get(0)) : String.join(", ", rows.stream().map(Row::id).toList());
    }

    /** The first few names. */
    String names(int most) {
        List<String> all = rows.stream().map(Row::id).toList();
        return all.size() <= most ? String.join(", ", all) : String.join(", ", all.subList(0, most)) + " and " + (all.size() - most) + " more";
    }
}
