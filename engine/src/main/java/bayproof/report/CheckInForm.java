package bayproof.report;

import bayproof.facts.CheckInSheet;
import bayproof.read.Address;
import bayproof.review.Evaluation;
import bayproof.splice.FilledForm;
import java.util.List;
import java.util.Map;

/** The sheet that is filled in with the customer at the vehicle as it comes, as Markdown; {@link FilledForm} reads it back. */
public final class CheckInForm {
    private static final String LINE = "_".repeat(24);

    private final Evaluation evaluation;
    private final String job;
    private final Paper page = new Paper();

    private CheckInForm(Evaluation evaluation, String job) {
        this.evaluation = evaluation;
        this.job = job;
    }

    /**
     * The sheet.
     *
     * @param job the job's plan or folder as the user gave it
     */
    public static String of(Evaluation evaluation, String job) {
        return new CheckInForm(evaluation, job).text();
    }

    private String text() {
        page.line("# Check-in: " + escaped(evaluation.job().plan().job().title().orElse("job without a title")));
        page.blank().line("TAG " + escaped(evaluation.job().plan().job().tag().orElse("not given")) + ". At the vehicle, together with the customer. "
                + "Ten minutes, one sheet, one signature.");
        page.blank().line("Several words stand with a comma between. none is an answer, and so is unknown, which stays open. A blank changes nothing.");
        page.blank().line("Read back: bayproof handover " + Places.slashed(job) + " --filled FORM, then the same with --write");
        page.blank().line("CAUTION: a battery post is live at all times. No meter and no lamp on restraint wiring, which is often yellow. " + Cautions.FIRST_COMES);
        page.blank();
        blank("Checked in by", FilledForm.BY, "", "");
        blank("Date and time", FilledForm.WHEN, "", "such as 2026-11-20T08:30");
        for (Map.Entry<String, List<CheckInSheet.Line>> section : CheckInSheet.of(evaluation.job()).entrySet()) {
            page.blank().line("## " + section.getKey()).blank();
            section.getValue().forEach(line -> blank(line.ask(), line.path(), line.now(), how(line)));
        }
        return page.text();
    }

    private String how(CheckInSheet.Line line) {
        Address address = Address.of(evaluation.files(), line.path());
        if (address == null) {
            return "";
        }
        return !address.words().isEmpty() ? String.join(", ", address.words()) : address.unit();
    }

    private void blank(String ask, String path, String now, String how) {
        page.hanging("- ", 2, escaped(Plain.capital(ask)) + (now.isEmpty() ? "" : " (written so far: " + escaped(now) + ")"));
        page.row("  " + FilledForm.PATH_BEGIN + path + FilledForm.PATH_END);
        String label = "  - " + FilledForm.ANSWER;
        boolean fits = label.length() + how.length() + LINE.length() + 5 <= Paper.WIDTH;
        if (!fits) {
            page.hanging("  - In: ", 4, escaped(how));
        }
        page.row(label + (fits && !how.isEmpty() ? " [" + escaped(how) + "]" : "") + ": " + LINE);
    }

    private static String escaped(String text) {
        return Plain.text(text).replace("<", "&lt;").replace("`", "'");
    }
}
