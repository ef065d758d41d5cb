package bayproof.report.worksheet;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;

/** A table for other programs. A number is SI; what nobody gave is null. */
public final class Table {
    /** A column; its dimension is null for a text. */
    record Column(String name, Dimension dimension) {
    }

    private final String name;
    private final List<Column> columns = new ArrayList<>();
    private final List<List<Object>> rows = new ArrayList<>();

    Table(String name) {
        this.name = name;
    }

    Table text(String... names) {
        for (String column : names) {
            columns.add(new Column(column, null));
        }
        return this;
    }

    Table number(String column, Dimension dimension) {
        columns.add(new Column(column, dimension));
        return this;
    }

    /** Adds a row: texts, numbers, or either as {@link Shown}; a list becomes one text. */
    Table row(Object... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(name + " has " + columns.size() + " columns, not " + cells.length);
        }
        List<Object> row = new ArrayList<>();
        for (Object cell : cells) {
            Object value = cell instanceof Shown<?> shown ? shown.orElse(null) : cell;
            row.add(value instanceof List<?> list ? String.join(" ", list.stream().map(Object::toString).toList()) : value);
        }
        rows.add(row);
        return this;
    }

    String name() {
        return name;
    }

    List<Column> columns() {
        return columns;
    }

    List<List<Object>> rows() {
        return rows;
    }
}
