package bayproof.report.worksheet;

import bayproof.report.Plain;
import bayproof.units.Dimension;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;

/** A table as RFC 4180 writes it, for a spreadsheet. Hours are in hours, every other number is SI with its unit in the head. */
final class CsvForm {
    private static final double SECONDS_PER_HOUR = 3600;
    /** What a spreadsheet takes for the beginning of a formula. */
    private static final String FORMULA = "=+-@";
    private static final MathContext DIGITS = new MathContext(10);

    private CsvForm() {
    }

    static String of(Table table) {
        StringBuilder csv = new StringBuilder(table.columns().stream().map(CsvForm::head).collect(Collectors.joining(","))).append("\r\n");
        for (List<Object> row : table.rows()) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                line.append(i == 0 ? "" : ",").append(cell(row.get(i), table.columns().get(i).dimension()));
            }
            csv.append(line).append("\r\n");
        }
        return csv.toString();
    }

    private static String head(Table.Column column) {
        return quoted(column.dimension() == null ? column.name()
                : column.name() + " [" + (column.dimension() == Dimension.TIME ? "h" : column.dimension().symbol()) + "]");
    }

    private static String cell(Object value, Dimension dimension) {
        if (value == null) {
            return "";
        }
        if (value instanceof Double number) {
            double printed = dimension == Dimension.TIME ? number / SECONDS_PER_HOUR : number;
            return BigDecimal.valueOf(printed).round(DIGITS).stripTrailingZeros().toPlainString();
        }
        return quoted(harmless(Plain.text(value.toString())));
    }

    /** A text that a spreadsheet would run begins with an apostrophe instead. */
    private static String harmless(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String quoted(String text) {
        return text.matches("[A-Za-z0-9 ._/()\\[\\]-]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
