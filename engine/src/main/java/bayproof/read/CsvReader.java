package bayproof.read;

import bayproof.read.CsvCells.Cell;
import bayproof.read.Layout.Form;
import bayproof.read.Layout.Slot;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.vocabulary.At;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a table, one row an entry, into the tree that the same entries would give in YAML. The header names the fields,
 * nested ones by their path ({@code ends.from.terminal}), the first column is {@code id}, and a unit may stand behind a
 * name ({@code length [m]}). An empty cell is not written.
 */
final class CsvReader {
    private static final String ID = "id";
    private static final Pattern HEADER = Pattern.compile("([^\\[\\]]*?)\\s*(?:\\[\\s*([^\\[\\]]*?)\\s*])?");
    private static final Pattern BARE_NUMBER = Pattern.compile("[+−-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)");
    private static final Pattern GAUGE_OVER_ZERO = Pattern.compile("[1-4]/0");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("([+−-]?[0-9]*),([0-9]+(?:\\s*[^0-9.,\\s].*)?)");
    /** Where commas are decimals, a point before three digits may be a thousands mark. */
    private static final Pattern POINT_OR_THOUSANDS = Pattern.compile("[+−-]?[1-9][0-9]{0,2}(?:\\.[0-9]{3})+(?:\\s*[^0-9.,\\s].*)?");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s\u00A0]*\\|[\\s\u00A0]*|[\\s\u00A0]+");

    /** One column of the table. */
    private record Column(String name, List<String> path, String unit, Form form, At at) {
        boolean isNumber() {
            return !unit.isEmpty() || form == Form.QUANTITY || form == Form.SIZE;
        }
    }

    /** A group of keys while its row is read. */
    private static final class Group {
        private final At at;
        private final Map<String, At> keys = new LinkedHashMap<>();
        private final Map<String, Group> groups = new HashMap<>();
        private final Map<String, Tree> values = new HashMap<>();

        Group(At at) {
            this.at = at;
        }

        MapTree tree() {
            Map<String, Entry> entries = new LinkedHashMap<>();
            keys.forEach((key, keyAt) -> {
                Group deeper = groups.get(key);
                entries.put(key, new Entry(key, keyAt, deeper == null ? values.get(key) : deeper.tree()));
            });
            return new MapTree(entries, at);
        }
    }

    private final String file;
    private final char separator;
    private final Problems problems = new Problems();

    private CsvReader(String file, char separator) {
        this.file = file;
        this.separator = separator;
    }

    /**
     * Reads a table.
     *
     * @param bytes what its file holds
     * @param name  how messages call it
     * @param rows  what a row can be
     * @throws UnusableInput when it is not a sound table; all mistakes are named together
     */
    static MapTree read(byte[] bytes, String name, Collection<? extends Class<?>> rows) throws UnusableInput {
        String text = TreeReader.text(bytes, name, "Save it from the spreadsheet as \"CSV UTF-8\".");
        CsvReader reader = new CsvReader(name, CsvCells.separator(text));
        MapTree tree = reader.table(text, rows);
        reader.problems.throwIfAny();
        return tree;
    }

    private MapTree table(String text, Collection<? extends Class<?>> kinds) throws UnusableInput {
        At begin = new At(file, 1, 1);
        if (separator == '\t') {
            problems.add(begin, "the cells of this table are separated by tabs.", "Save it with commas or semicolons.");
            return new MapTree(Map.of(), begin);
        }
        List<List<Cell>> rows = CsvCells.read(file, text, separator, problems);
        if (rows.isEmpty() || !rows.get(0).get(0).text().equals(ID)) {
            problems.add(rows.isEmpty() ? begin : rows.get(0).get(0).at(), "this table does not begin with the column \"" + ID + "\".",
                    "Its first row names the fields: id first, then such as " + String.join(", ",
                            Layout.of(kinds.iterator().next()).keySet().stream().limit(3).toList()) + ".");
            return new MapTree(Map.of(), begin);
        }
        List<Column> columns = columns(rows.get(0), kinds);
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (List<Cell> row : rows.subList(1, rows.size())) {
            Cell id = row.get(0);
            MapTree group = group(row, columns);
            Entry before = entries.get(id.text());
            if (id.text().isEmpty()) {
                problems.add(id.at(), "this row has no id.", "Write one in the first column.");
            } else if (before != null) {
                problems.add(id.at(), "\"" + id.text() + "\" stands here a second time (first at line " + before.keyAt().line() + ").",
                        "Keep one of them.");
            } else {
                entries.put(id.text(), new Entry(id.text(), id.at(), group));
            }
        }
        return new MapTree(entries, begin);
    }

    // header

    private List<Column> columns(List<Cell> header, Collection<? extends Class<?>> kinds) {
        List<Column> columns = new ArrayList<>();
        Map<String, Column> seen = new HashMap<>();
        for (Cell cell : header) {
            Column column = column(cell, kinds);
            columns.add(column);
            Column before = column == null ? null : seen.putIfAbsent(column.name(), column);
            if (before != null) {
                problems.add(cell.at(), "the column \"" + column.name() + "\" stands here a second time.", "Keep one of them.");
            }
        }
        return columns;
    }

    /** A column, or null when its header is empty. */
    private Column column(Cell cell, Collection<? extends Class<?>> kinds) {
        if (cell.text().isEmpty()) {
            return null;
        }
        Matcher matcher = HEADER.matcher(cell.text());
        String name = matcher.matches() ? matcher.group(1) : "";
        List<String> path = Arrays.asList(name.split("\\.", -1));
        if (path.contains("") || path.size() > TreeReader.MOST_DEPTH) {
            problems.add(cell.at(), "\"" + cell.text() + "\" does not name a field.",
                    "Write such as length, length [m] or ends.from.terminal.");
            return null;
        }
        Form form = kinds.stream().map(kind -> Layout.find(kind, path)).filter(Objects::nonNull).findFirst().map(Slot::form).orElse(null);
        return new Column(name, path, matcher.group(2) == null ? "" : matcher.group(2), form, cell.at());
    }

    // rows

    private MapTree group(List<Cell> row, List<Column> columns) {
        Group root = new Group(row.get(0).at());
        for (int i = 1; i < row.size(); i++) {
            Cell cell = row.get(i);
            if (cell.text().isEmpty()) {
                continue;
            }
            if (i >= columns.size()) {
                problems.add(cell.at(), "this row has more cells than the header has names.", separator == ','
                        ? "A decimal is written with a point; a text that holds a comma stands in quotes."
                        : "A text that holds a semicolon stands in quotes.");
                break;
            }
            Column column = columns.get(i);
            if (column == null) {
                problems.add(cell.at(), "nothing in the header says what this cell is.", "Name the column.");
            } else {
                put(root, column, cell);
            }
        }
        return root.tree();
    }

    private void put(Group root, Column column, Cell cell) {
        // What no kind of row knows is wrong once, in the header; what another kind of row knows is wrong in its row.
        At keyAt = column.form() == null ? column.at() : cell.at();
        Group group = root;
        for (String step : column.path().subList(0, column.path().size() - 1)) {
            if (group.values.containsKey(step)) {
                clash(step, cell);
                return;
            }
            group.keys.putIfAbsent(step, keyAt);
            group = group.groups.computeIfAbsent(step, key -> new Group(cell.at()));
        }
        String last = column.path().get(column.path().size() - 1);
        if (group.groups.containsKey(last)) {
            clash(last, cell);
            return;
        }
        group.keys.put(last, keyAt);
        group.values.put(last, value(column, cell));
    }

    private void clash(String key, Cell cell) {
        problems.add(cell.at(), "\"" + key + "\" is written in this row as a whole and in parts.", "Keep one of them.");
    }

    private Tree value(Column column, Cell cell) {
        if (column.form() == Form.LIST && !List.of("none", "unknown", "cannot-be-seen").contains(cell.text())) {
            return new ListTree(BETWEEN_WORDS.splitAsStream(cell.text()).filter(word -> !word.isEmpty())
                    .map(word -> (Tree) new ScalarTree(word, false, cell.at())).toList(), cell.at());
        }
        if ((column.form() == Form.GROUP || column.form() == Form.NAMES) && cell.text().equals("none")) {
            return new MapTree(Map.of(), cell.at());
        }
        return new ScalarTree(column.isNumber() ? number(column, cell) : cell.text(), false, cell.at());
    }

    private String number(Column column, Cell cell) {
        String text = cell.text();
        if (separator == ';') {
            Matcher comma = DECIMAL_COMMA.matcher(text);
            if (comma.matches()) {
                text = comma.group(1) + "." + comma.group(2);
            } else if (POINT_OR_THOUSANDS.matcher(text).matches()) {
                problems.add(cell.at(), "\"" + text + "\" has a point that may be a decimal one or mark thousands.",
                        "Write a decimal comma, and no mark for thousands.");
            }
        }
        boolean lacksUnit = BARE_NUMBER.matcher(text).matches() || column.form() == Form.SIZE && GAUGE_OVER_ZERO.matcher(text).matches();
        return lacksUnit && !column.unit().isEmpty() ? text + " " + column.unit() : text;
    }
}
