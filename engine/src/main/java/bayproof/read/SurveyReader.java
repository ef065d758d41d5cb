package bayproof.read;

import bayproof.read.SurveyTable.Column;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.vocabulary.At;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Reads the filled-in survey form of a vehicle into the tree that the same values give as a vehicle sheet. */
public final class SurveyReader {
    /** Heading of the table of single values. */
    public static final String VALUES = "values";
    private static final String UNKNOWN = "unknown";
    private static final Pattern RULE = Pattern.compile("\\|[\\s|:-]*");
    private static final Pattern BETWEEN_NAMES = Pattern.compile("[\\s,;]+");

    /** A cell with its place. */
    private record Cell(String text, At at) {
    }

    /** Groups of keys while they are filled; a value is a tree, a group is such a map. */
    private static final class Group {
        private final At at;
        private final Map<String, Object> entries = new LinkedHashMap<>();
        private final Map<String, At> keys = new LinkedHashMap<>();

        Group(At at) {
            this.at = at;
        }

        Group group(String key, At keyAt) {
            keys.putIfAbsent(key, keyAt);
            return (Group) entries.computeIfAbsent(key, any -> new Group(keyAt));
        }

        void put(String key, At keyAt, Tree value) {
            keys.put(key, keyAt);
            entries.put(key, value);
        }

        MapTree tree() {
            Map<String, Entry> result = new LinkedHashMap<>();
            entries.forEach((key, value) -> result.put(key, new Entry(key, keys.get(key), value instanceof Group group ? group.tree() : (Tree) value)));
            return new MapTree(result, at);
        }
    }

    private final String file;
    private final Problems problems = new Problems();
    private final Map<String, SurveyTable> tables = new TreeMap<>();
    private final Group sheet;
    private String heading = "";
    private List<Cell> header;

    private SurveyReader(String file) {
        this.file = file;
        this.sheet = new Group(new At(file, 1, 1));
        SurveyTable.all().forEach(table -> tables.put(table.heading(), table));
    }

    /**
     * Reads a form and checks what it says as a vehicle sheet is checked.
     *
     * @return the sheet; what was not filled in says unknown
     * @throws UnusableInput when anything in it cannot be used; all mistakes are named together, each with its place in the form
     */
    public static MapTree read(Path path) throws UnusableInput {
        String name = path.toString();
        SurveyReader reader = new SurveyReader(name);
        MapTree tree = reader.read(TreeReader.text(TreeReader.bytes(path, name), name, "Save the form as UTF-8 text."));
        reader.problems.throwIfAny();
        Sheet.vehicle(tree);
        return tree;
    }

    private MapTree read(String text) {
        At top = new At(file, 1, 1);
        sheet.put("bayproof", top, new ScalarTree("1", false, top));
        sheet.put("kind", top, new ScalarTree("vehicle", false, top));
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.startsWith("## ")) {
                heading(line.substring(3).strip(), new At(file, number, 4));
            } else if (line.startsWith("|") && !heading.isEmpty() && !RULE.matcher(line).matches()) {
                row(cells(line, number));
            }
        }
        return sheet.tree();
    }

    private void heading(String name, At at) {
        header = null;
        heading = name;
        if (!name.equals(VALUES) && !tables.containsKey(name)) {
            List<String> known = new ArrayList<>(tables.keySet());
            known.add(VALUES);
            problems.unknown(at, "a table of the survey form", name, known);
            heading = "";
        }
    }

    private List<Cell> cells(String line, int number) {
        List<Cell> cells = new ArrayList<>();
        int from = 1;
        while (from < line.length()) {
            int to = line.indexOf('|', from);
            String raw = line.substring(from, to < 0 ? line.length() : to);
            if (to >= 0 || !raw.isBlank()) {
                int lead = raw.length() - raw.stripLeading().length();
                cells.add(new Cell(raw.strip(), new At(file, number, from + 1 + (raw.isBlank() ? 0 : lead))));
            }
            from = to < 0 ? line.length() : to + 1;
        }
        return cells;
    }

    private void row(List<Cell> cells) {
        if (header == null) {
            header = cells;
        } else if (cells.stream().anyMatch(cell -> !cell.text().isEmpty())) {
            if (cells.size() > header.size()) {
                problems.add(cells.get(header.size()).at(), "this row has more cells than its table has columns.", "Take the stroke out of the text.");
            } else if (heading.equals(VALUES)) {
                value(cells);
            } else {
                entry(tables.get(heading), cells);
            }
        }
    }

    private void value(List<Cell> cells) {
        String path = cells.get(0).text();
        Column column = SurveyTable.values().get(path);
        if (column == null) {
            problems.unknown(cells.get(0).at(), "a value of the survey form", path, SurveyTable.values().keySet());
            return;
        }
        Group group = sheet;
        String[] steps = path.split("\\.");
        for (int i = 0; i + 1 < steps.length; i++) {
            group = group.group(steps[i], cells.get(0).at());
        }
        group.put(steps[steps.length - 1], cells.get(0).at(), tree(column, cells.size() < 2 ? new Cell("", cells.get(0).at()) : cells.get(1)));
    }

    private void entry(SurveyTable table, List<Cell> cells) {
        Cell id = cells.get(0);
        if (id.text().isEmpty()) {
            problems.add(id.at(), "this row has no name.", "Write one into the first column, such as " + table.heading().replaceAll("e?s$", "") + "-1.");
            return;
        }
        Group group = sheet;
        for (String step : table.path()) {
            group = group.group(step, id.at());
        }
        boolean known = group.entries.containsKey(id.text());
        if (known && table.inner() == null) {
            problems.add(id.at(), "\"" + id.text() + "\" stands in a row above already.", "Choose another name.");
            return;
        }
        Group entry = group.group(id.text(), id.at());
        if (table.kind() != null) {
            entry.put("kind", id.at(), new ScalarTree(table.kind(), false, id.at()));
        }
        Group inner = null;
        boolean named = true;
        for (Column column : table.columns()) {
            Cell cell = cell(column, cells);
            if (cell == null || column.deep() && !named) {
                continue;
            }
            if (!column.deep()) {
                if (!known || !cell.text().isEmpty()) {
                    entry.put(column.name(), cell.at(), tree(column, cell));
                }
            } else if (inner == null) {
                named = !cell.text().isEmpty();
                Group around = table.inner().isEmpty() ? entry : entry.group(table.inner(), id.at());
                inner = named ? around.group(cell.text(), cell.at()) : null;
            } else {
                inner.put(column.name(), cell.at(), tree(column, cell));
            }
        }
        refuseOtherColumns(table);
    }

    /** The cell of a column; null where the form has no such column. */
    private Cell cell(Column column, List<Cell> cells) {
        for (int i = 1; i < header.size(); i++) {
            if (header.get(i).text().equals(column.name())) {
                return i < cells.size() ? cells.get(i) : new Cell("", cells.get(0).at());
            }
        }
        return null;
    }

    private void refuseOtherColumns(SurveyTable table) {
        List<String> known = table.columns().stream().map(Column::name).toList();
        for (Cell name : header.subList(1, header.size())) {
            if (!known.contains(name.text())) {
                problems.unknown(name.at(), "a column of this table", name.text(), known);
            }
        }
    }

    private static Tree tree(Column column, Cell cell) {
        if (cell.text().isEmpty()) {
            return new ScalarTree(UNKNOWN, false, cell.at());
        }
        if (!column.list() || List.of("none", UNKNOWN, "cannot-be-seen").contains(cell.text())) {
            return new ScalarTree(cell.text(), false, cell.at());
        }
        return new ListTree(BETWEEN_NAMES.splitAsStream(cell.text()).filter(name -> !name.isEmpty())
                .map(name -> (Tree) new ScalarTree(name, false, cell.at())).toList(), cell.at());
    }
}
