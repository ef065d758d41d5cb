package bayproof.read;

import bayproof.vocabulary.At;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits a table into rows of cells, each with its line and column, after RFC 4180 and as spreadsheets write it.
 *
 * <p>A tokenizer of our own, because the common libraries tell where a record begins and not where a cell does, and a
 * cell's place cannot be worked out again from its value once quotes and breaks are gone. One of them is the oracle in
 * the tests.
 */
public final class CsvCells {
    static final int MOST_ROWS = 10_000;
    static final int MOST_COLUMNS = 200;

    /**
     * One cell.
     *
     * @param text what it says, without blanks around it; a break inside it is one blank
     * @param at   where it begins
     * @param from where it begins in the text of the file
     * @param to   where it ends there, its quotes among it
     */
    public record Cell(String text, At at, int from, int to) {
    }

    private final String file;
    private final String text;
    private final char separator;
    private final Problems problems;
    private int next;
    private int line = 1;
    private int column = 1;

    private CsvCells(String file, String text, char separator, Problems problems) {
        this.file = file;
        this.text = text;
        this.separator = separator;
        this.problems = problems;
    }

    /**
     * Reads all rows, the header first; rows without any text are left out.
     *
     * @throws UnusableInput when there are too many to be a job's table
     */
    static List<List<Cell>> read(String file, String text, char separator, Problems problems) throws UnusableInput {
        return new CsvCells(file, text, separator, problems).rows();
    }

    /**
     * The same for a table that stands alone.
     *
     * @throws UnusableInput when it is no sound table; all mistakes are named together
     */
    public static List<List<Cell>> read(String file, String text) throws UnusableInput {
        Problems problems = new Problems();
        List<List<Cell>> rows = read(file, text, separator(text), problems);
        problems.throwIfAny();
        return rows;
    }

    /** The separator of a table: the first comma, semicolon or tab of its header that stands outside quotes; else a comma. */
    public static char separator(String text) {
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r')) {
                return ',';
            } else if (!quoted && (c == ',' || c == ';' || c == '\t')) {
                return c;
            }
        }
        return ',';
    }

    private List<List<Cell>> rows() throws UnusableInput {
        List<List<Cell>> rows = new ArrayList<>();
        while (next < text.length()) {
            List<Cell> row = row();
            if (row.stream().anyMatch(cell -> !cell.text().isEmpty())) {
                rows.add(row);
            }
            // The header is a row as well.
            if (rows.size() > MOST_ROWS + 1) {
                throw tooMuch("more than " + MOST_ROWS + " rows stand in this table.");
            }
        }
        return rows;
    }

    private List<Cell> row() throws UnusableInput {
        List<Cell> cells = new ArrayList<>();
        while (true) {
            cells.add(cell());
            if (cells.size() > MOST_COLUMNS) {
                throw tooMuch("more than " + MOST_COLUMNS + " cells stand in one row.");
            }
            if (next >= text.length()) {
                return cells;
            }
            boolean more = text.charAt(next) == separator;
            take();
            if (!more) {
                return cells;
            }
        }
    }

    private UnusableInput tooMuch(String what) {
        return new UnusableInput(List.of(new Problem(here(), what, "Check that it is the right file.")));
    }

    private At here() {
        return new At(file, line, column);
    }

    private Cell cell() {
        skipBlanks();
        At at = here();
        int from = next;
        String content = next < text.length() && text.charAt(next) == '"' ? quoted(at) : plain();
        return new Cell(content, at, from, next);
    }

    private String quoted(At at) {
        StringBuilder content = new StringBuilder();
        take();
        while (next < text.length()) {
            if (text.charAt(next) == '"') {
                take();
                if (next >= text.length() || text.charAt(next) != '"') {
                    skipBlanks();
                    if (!atEnd()) {
                        problems.add(here(), "something follows the closing quote of this cell.",
                                "Write a quote inside a quoted cell twice.");
                        plain();
                    }
                    return stripped(content);
                }
            }
            content.append(take());
        }
        problems.add(at, "the quote that opens this cell is never closed.", "Close it, or write a quote inside a quoted cell twice.");
        return stripped(content);
    }

    private String plain() {
        StringBuilder content = new StringBuilder();
        while (!atEnd()) {
            content.append(take());
        }
        return stripped(content);
    }

    private boolean atEnd() {
        return next >= text.length() || text.charAt(next) == separator || text.charAt(next) == '\n' || text.charAt(next) == '\r';
    }

    private void skipBlanks() {
        while (next < text.length() && isBlank(text.charAt(next)) && !atEnd()) {
            take();
        }
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t' || c == '\u00A0';
    }

    private static String stripped(StringBuilder content) {
        int from = 0;
        int to = content.length();
        while (from < to && isBlank(content.charAt(from))) {
            from++;
        }
        while (to > from && isBlank(content.charAt(to - 1))) {
            to--;
        }
        return content.substring(from, to);
    }

    /** Takes one character, or one line break of any kind, which comes back as a blank. */
    private String take() {
        int character = text.codePointAt(next);
        if (character == '\n' || character == '\r') {
            next += character == '\r' && next + 1 < text.length() && text.charAt(next + 1) == '\n' ? 2 : 1;
            line++;
            column = 1;
            return " ";
        }
        if (Character.isISOControl(character) && character != '\t') {
            problems.add(here(), "a character stands here that nobody can see.", "Remove it, or write the cell anew.");
            character = ' ';
        }
        next += Character.charCount(text.codePointAt(next));
        column++;
        return Character.toString(character);
    }
}
