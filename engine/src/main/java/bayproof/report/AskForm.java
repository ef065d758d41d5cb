package bayproof.report;

import bayproof.demand.Gate;
import bayproof.read.Plan;
import bayproof.review.Body;
import bayproof.review.OpenFact;
import bayproof.review.Question;
import bayproof.splice.FilledForm;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The questions of a review as a form to fill in, grouped by where the body must be: as Markdown for paper or a phone, or
 * as a table. {@link FilledForm} reads both back.
 */
public final class AskForm {
    private static final String LINE = "_".repeat(24);
    private static final List<String> COLUMNS = List.of("number", "where", "thing", "what to find out", "unit or words", "tool", "answer",
            "if you cannot know it", "path");

    private final Standing standing;
    private final String plan;
    private final List<Question> asked;
    private final Map<Body, List<Integer>> byBody = new TreeMap<>();

    private AskForm(Standing standing, String plan, boolean all) {
        this.standing = standing;
        this.plan = plan;
        this.asked = all ? standing.questions().all() : standing.questions().first();
        for (int i = 0; i < asked.size(); i++) {
            byBody.computeIfAbsent(asked.get(i).thing().body(), any -> new ArrayList<>()).add(i);
        }
    }

    /**
     * The form as Markdown.
     *
     * @param plan the plan's file as the user gave it
     * @param all  whether every question is wanted, not only those asked at once
     */
    public static String markdown(Standing standing, String plan, boolean all) {
        return new AskForm(standing, plan, all).markdown();
    }

    /** The form as a table; see {@link #markdown}. */
    public static String csv(Standing standing, String plan, boolean all) {
        return new AskForm(standing, plan, all).csv();
    }

    private String markdown() {
        Plan.Head job = standing.evaluation().job().plan().job();
        Paper page = new Paper();
        page.line("# Ask form: " + escaped(job.title().orElse("job without a title")));
        page.blank().line("TAG " + escaped(job.tag().orElse("not given")) + ", " + standing.gate().word() + ". "
                + QuestionText.total(standing.questions(), asked.size()));
        if (asked.isEmpty()) {
            return page.text();
        }
        page.blank().line("Write each answer with its unit. \"unknown\" keeps the question open; \"cannot-be-seen\" says that you looked "
                + "and could not see it, and is judged. A blank is asked again.");
        page.blank().line("Read back: bayproof " + (standing.gate() == Gate.HANDOVER ? "handover " + Places.slashed(plan) + " --filled FORM"
                : "new " + Places.slashed(plan) + " --answers FORM"));
        page.blank();
        blank(page, "Filled in by", FilledForm.BY, "");
        blank(page, "Date and time", FilledForm.WHEN, "such as 2026-11-20T10:20");
        byBody.forEach((body, numbers) -> {
            page.blank().line("## " + body.heading() + " (" + body.says() + ")");
            numbers.forEach(number -> question(page, number));
        });
        return page.text();
    }

    private void question(Paper page, int number) {
        Question question = asked.get(number);
        page.blank().line("### " + (number + 1) + "  " + escaped(Plain.capital(Plain.text(question.thing().name()))) + " (holds up "
                + Plain.count(question.checks().size(), "check") + ")");
        page.blank();
        for (OpenFact fact : question.facts()) {
            if (fact.address() == null) {
                page.hanging("- ", 2, escaped(Plain.capital(Plain.text(fact.need().ask()))) + ": only a shop limit can narrow this"
                        + (fact.limit() == null ? "." : ", " + fact.limit() + "."));
                continue;
            }
            blank(page, QuestionText.ask(question, fact), fact.need().path(), QuestionText.how(fact));
            if (fact.instead() != null) {
                page.hanging("  - If you cannot know it: ", 4, escaped(fact.instead()));
            }
        }
    }

    private static void blank(Paper page, String ask, String path, String how) {
        page.hanging("- ", 2, escaped(Plain.capital(Plain.text(ask))));
        page.row("  " + FilledForm.PATH_BEGIN + Plain.text(path) + FilledForm.PATH_END);
        // The answer keeps its line, and what it is measured in stands above it when there is much of it.
        String label = "  - " + FilledForm.ANSWER;
        boolean fits = label.length() + how.length() + LINE.length() + 5 <= Paper.WIDTH;
        if (!fits) {
            page.hanging("  - In: ", 4, escaped(how));
        }
        page.row(label + (fits && !how.isEmpty() ? " [" + escaped(how).replace(']', ')').replace('[', '(') + "]" : "") + ": " + LINE);
    }

    /** Text that Markdown shows as it is; what would open a mark or an element is no part of our own words. */
    private static String escaped(String text) {
        return Plain.text(text).replace("<", "&lt;").replace("`", "'");
    }

    // table

    private String csv() {
        StringBuilder table = new StringBuilder(String.join(",", COLUMNS)).append("\r\n");
        row(table, "", "", "this form", "filled in by", "", "", "", "", FilledForm.BY);
        row(table, "", "", "this form", "date and time", "such as 2026-11-20T10:20", "", "", "", FilledForm.WHEN);
        byBody.forEach((body, numbers) -> numbers.forEach(number -> {
            Question question = asked.get(number);
            for (OpenFact fact : question.facts()) {
                if (fact.address() != null) {
                    row(table, String.valueOf(number + 1), body.heading(), question.thing().name(), QuestionText.ask(question, fact),
                            QuestionText.unit(fact), fact.tool(), "", fact.instead(), fact.need().path());
                }
            }
        }));
        return table.toString();
    }

    private static void row(StringBuilder table, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            table.append(i == 0 ? "" : ",").append(cell(cells[i] == null ? "" : Plain.text(cells[i])));
        }
        table.append("\r\n");
    }

    /** A cell as spreadsheets read it; one that begins like a formula is made a text. */
    private static String cell(String text) {
        String plain = !text.isEmpty() && "=+-@".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        return "\"" + plain.replace("\"", "\"\"") + "\"";
    }
}
