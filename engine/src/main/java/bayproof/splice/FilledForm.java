package bayproof.splice;

import bayproof.read.CsvCells;
import bayproof.read.CsvCells.Cell;
import bayproof.read.Problem;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.vocabulary.At;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A form as somebody filled it in.
 *
 * @param by      who filled it in; empty where that was left blank
 * @param when    when that was; empty where that was left blank
 * @param answers what was answered, in the order of the form
 * @param blank   how many blanks were left
 */
public record FilledForm(String by, String when, List<Answer> answers, int blank) {
    /** Paths of the head of a form. */
    public static final String BY = "form.by";
    public static final String WHEN = "form.when";
    /** How a form marks the path of a fact, and the blank behind it. */
    public static final String PATH_BEGIN = "<sub>";
    public static final String PATH_END = "</sub>";
    public static final String ANSWER = "Answer";

    private static final String CHECK_IN = "check-in.";
    private static final Pattern PATH = Pattern.compile(".*" + PATH_BEGIN + "\\s*`?([^<`\\s]+)`?\\s*" + PATH_END + ".*");
    private static final Pattern BLANK = Pattern.compile("\\s*(?:[-*]\\s+)?" + ANSWER + "\\s*(?:\\[[^\\]]*])?\\s*:(.*)");

    public FilledForm {
        answers = List.copyOf(answers);
    }

    /**
     * Reads a form, Markdown or CSV.
     *
     * @throws UnusableInput when it is none
     */
    public static FilledForm read(byte[] bytes, String name) throws UnusableInput {
        String text = TreeReader.text(bytes, name, "Save it as UTF-8.");
        List<Answer> all = name.toLowerCase(Locale.ROOT).endsWith(".csv") ? cells(text, name) : lines(text, name);
        if (all.isEmpty()) {
            throw new UnusableInput(List.of(new Problem(new At(name, 1, 1), "this is no form: no blank to answer stands in it.",
                    "Print one with bayproof review PLAN --ask, and fill it in.")));
        }
        String by = head(all, BY);
        String when = head(all, WHEN);
        List<Answer> facts = all.stream().filter(answer -> !answer.path().equals(BY) && !answer.path().equals(WHEN)).toList();
        List<Answer> given = new ArrayList<>(facts.stream().filter(answer -> !answer.text().isEmpty()).toList());
        checkedIn(given, by, when);
        return new FilledForm(by, when, given, (int) facts.stream().filter(answer -> answer.text().isEmpty()).count());
    }

    /** Who filled in a check-in sheet checked the vehicle in. */
    private static void checkedIn(List<Answer> given, String by, String when) {
        At at = given.stream().filter(answer -> answer.path().startsWith(CHECK_IN)).map(Answer::at).findFirst().orElse(null);
        if (at != null && !by.isEmpty() && !when.isEmpty()) {
            given.add(0, new Answer(CHECK_IN + "who", by, at));
            given.add(1, new Answer(CHECK_IN + "when", when, at));
        }
    }

    private static String head(List<Answer> all, String path) {
        return all.stream().filter(answer -> answer.path().equals(path)).map(Answer::text).findFirst().orElse("");
    }

    private static List<Answer> lines(String text, String name) {
        List<Answer> answers = new ArrayList<>();
        String path = null;
        int number = 0;
        for (String line : text.split("\r\n|\n|\r", -1)) {
            number++;
            Matcher marked = PATH.matcher(line);
            Matcher blank = BLANK.matcher(line);
            if (marked.matches()) {
                path = marked.group(1);
            } else if (path != null && blank.matches()) {
                answers.add(new Answer(path, stripped(blank.group(1)), new At(name, number, blank.start(1) + 1)));
                path = null;
            }
        }
        return answers;
    }

    /** What was written, without the line it was written on. */
    private static String stripped(String written) {
        return written.strip().replaceAll("^_+|_+$", "").strip();
    }

    private static List<Answer> cells(String text, String name) throws UnusableInput {
        List<List<Cell>> rows = CsvCells.read(name, text);
        List<String> header = rows.isEmpty() ? List.of() : rows.get(0).stream().map(cell -> cell.text().toLowerCase(Locale.ROOT)).toList();
        int path = header.indexOf("path");
        int answer = header.indexOf("answer");
        List<Answer> answers = new ArrayList<>();
        if (path < 0 || answer < 0) {
            return answers;
        }
        boolean commaIsDecimal = CsvCells.separator(text) == ';';
        for (List<Cell> row : rows.subList(1, rows.size())) {
            if (row.size() > path && !row.get(path).text().isEmpty()) {
                boolean given = row.size() > answer;
                String words = given ? stripped(row.get(answer).text()) : "";
                answers.add(new Answer(row.get(path).text(), commaIsDecimal && words.matches("[0-9]+,[0-9]+\\s*[^0-9.,]*") ? words.replace(',', '.') : words,
                        given ? row.get(answer).at() : row.get(path).at()));
            }
        }
        return answers;
    }
}
