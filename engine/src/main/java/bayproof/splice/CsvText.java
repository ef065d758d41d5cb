package bayproof.splice;

import bayproof.read.CsvCells;
import bayproof.read.CsvCells.Cell;
import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.UnusableInput;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Puts a value into the text of a table, in its own style, and touches nothing else. */
public final class CsvText {
    private final String text;
    private final char separator;

    private CsvText(String text) {
        this.text = text;
        this.separator = CsvCells.separator(text);
    }

    /**
     * The text with a value put into the cell of a row and a column. Either is added at the end where it is not there.
     *
     * @param text the table, with its byte order mark if it has one
     * @param keys id of the row, then the keys that the column is named by
     * @throws NotSpliced when it cannot be done without touching anything else
     */
    public static String put(String text, String name, List<String> keys, Tree value) throws NotSpliced {
        if (text.startsWith("\uFEFF")) {
            return "\uFEFF" + put(text.substring(1), name, keys, value);
        }
        if (keys.size() < 2) {
            throw new NotSpliced("a whole row is written by hand");
        }
        return new CsvText(text).put(name, keys.get(0), String.join(".", keys.subList(1, keys.size())), value);
    }

    private String put(String name, String id, String column, Tree value) throws NotSpliced {
        List<List<Cell>> rows;
        try {
            rows = CsvCells.read(name, text);
        } catch (UnusableInput e) {
            throw new NotSpliced("the table could not be read any more");
        }
        if (rows.isEmpty()) {
            throw new NotSpliced("the table is empty");
        }
        List<Cell> header = rows.get(0);
        List<Cell> row = rows.stream().skip(1).filter(cells -> cells.get(0).text().equals(id)).findFirst().orElse(null);
        List<Edit> edits = new ArrayList<>();
        int at = 0;
        while (at < header.size() && !header.get(at).text().replaceAll("\\s*\\[.*", "").equals(column)) {
            at++;
        }
        if (at == header.size()) {
            int end = header.get(at - 1).to();
            edits.add(new Edit(end, end, separator + column));
        }
        String written = quoted(words(value));
        edits.add(row == null ? newRow(quoted(id) + String.valueOf(separator).repeat(at) + written) : cell(row, at, written));
        return Edit.made(text, edits);
    }

    /** A row at the end, with the line ends of the table. */
    private Edit newRow(String row) {
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        return new Edit(text.length(), text.length(), (text.endsWith("\n") ? "" : end) + row + end);
    }

    private Edit cell(List<Cell> row, int at, String written) throws NotSpliced {
        if (at >= row.size()) {
            int end = row.get(row.size() - 1).to();
            return new Edit(end, end, String.valueOf(separator).repeat(at - row.size() + 1) + written);
        }
        Cell cell = row.get(at);
        if (!List.of("", "unknown", "cannot-be-seen").contains(cell.text())) {
            throw new NotSpliced("another value stands there already");
        }
        return new Edit(cell.from(), cell.to(), written);
    }

    private String words(Tree value) throws NotSpliced {
        if (value instanceof ScalarTree scalar) {
            // Where semicolons part the cells, a decimal has a comma.
            return separator == ';' && scalar.text().matches("[0-9]+\\.[0-9]+\\s*[^0-9.,]*") ? scalar.text().replace('.', ',') : scalar.text();
        }
        if (value instanceof ListTree list) {
            return list.items().isEmpty() ? "none" : list.items().stream().map(item -> ((ScalarTree) item).text()).collect(Collectors.joining(" "));
        }
        if (((MapTree) value).entries().isEmpty()) {
            return "none";
        }
        throw new NotSpliced("a table holds no groups of keys");
    }

    private String quoted(String words) {
        return words.indexOf(separator) < 0 && words.indexOf('"') < 0 && words.chars().noneMatch(c -> c == '\n' || c == '\r') ? words
                : "\"" + words.replace("\"", "\"\"") + "\"";
    }
}
