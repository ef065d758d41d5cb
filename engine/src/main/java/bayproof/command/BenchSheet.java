package bayproof.command;

import bayproof.facts.Curve;
import bayproof.facts.Curves;
import bayproof.read.JobReader;
import bayproof.read.PinForm;
import bayproof.read.Source;
import bayproof.read.UnusableInput;
import bayproof.report.Paper;
import bayproof.report.plots.Plot;
import bayproof.report.worksheet.Printout;
import bayproof.review.Evaluation;
import bayproof.review.Timing;
import bayproof.worksheet.Clearance;
import bayproof.worksheet.PinVerdicts;
import bayproof.worksheet.Worksheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The command that prints what a job is built and set by. */
final class BenchSheet {
    private static final List<String> FORMS = List.of("text", "markdown", "csv", "json");

    private BenchSheet() {
    }

    static Reply run(Order order) throws WrongUse, UnusableInput {
        String form = Review.oneOf("--as", order.word("--as", "text"), FORMS);
        String folder = order.word("--to", null);
        check(order, form, folder);
        Evaluation evaluation = Review.evaluate(order.subject(), order.word("--limits", null), Review.today(order), new Timing(), Source.DISK);
        if (JobReader.isEmpty(evaluation.job())) {
            throw new WrongUse("There is nothing to build: " + order.subject() + " names no item and no run.", "Write at least one.");
        }
        if (order.has("--plots")) {
            return plots(evaluation, order.word("--plots", ""));
        }
        Clearance clearance = Clearance.of(evaluation);
        int status = clearance.stops().isEmpty() ? Reply.CLEAR : Reply.COUNTS;
        if (order.has("--filled")) {
            Path file = Review.file(order.word("--filled", ""));
            List<PinVerdicts.Pin> pins = PinVerdicts.of(evaluation.job(), PinForm.read(file, evaluation.job().vehicle()));
            status = pins.stream().anyMatch(PinVerdicts.Pin::counts) ? Reply.COUNTS : Reply.CLEAR;
            return reply(status, Printout.filled(evaluation, clearance, pins, order.word("--filled", "")), form, folder, true);
        }
        if (order.has("--pins")) {
            return reply(Reply.CLEAR, Printout.pinForm(evaluation, clearance), form, folder, false);
        }
        if (order.has("--looks")) {
            return reply(Reply.CLEAR, Printout.looks(evaluation, clearance), form, folder, false);
        }
        return reply(status, order.has("--put-back") ? Printout.putBack(evaluation, clearance)
                : Printout.sheet(evaluation, Worksheet.of(evaluation, clearance)), form, folder, true);
    }

    private static void check(Order order, String form, String folder) throws WrongUse {
        if (order.has("--filled") && !order.has("--pins")) {
            throw new WrongUse("--filled belongs to --pins.", "Write --pins --filled " + order.word("--filled", "FILE") + ".");
        }
        List<String> sheets = List.of("--pins", "--put-back", "--looks").stream().filter(order::has).toList();
        if (sheets.size() > 1) {
            throw new WrongUse(sheets.get(0) + " and " + sheets.get(1) + " are two sheets.", "Ask for one of them.");
        }
        if (order.has("--plots") && (order.has("--pins") || order.has("--put-back") || order.has("--to") || order.has("--as"))) {
            throw new WrongUse("--plots stands alone: it writes pictures and prints no sheet.", "Ask for the sheet in a command of its own.");
        }
        if (form.equals("csv") && folder == null) {
            throw new WrongUse("--as csv writes several files and needs a folder.", "Add --to FOLDER.");
        }
        if (folder != null && (form.equals("text") || form.equals("json"))) {
            throw new WrongUse("--to belongs to --as csv and --as markdown.", "Leave it out; what is printed can be sent into a file.");
        }
    }

    private static Reply plots(Evaluation evaluation, String folder) throws WrongUse {
        List<Curve> curves = Curves.of(evaluation.job());
        if (curves.isEmpty()) {
            throw new WrongUse("There is nothing to draw: no band, box or feed of this plan has all its figures.", "Ask the review what is not shown.");
        }
        Paper page = new Paper();
        KeptFiles.write(folder, Plot.files(curves), false).forEach(file -> page.line("written: " + file.toString().replace('\\', '/')));
        return new Reply(Reply.CLEAR, page.text(), "");
    }

    private static Reply reply(int status, Printout printout, String form, String folder, boolean replacing) throws WrongUse {
        if (folder == null) {
            return new Reply(status, form.equals("json") ? printout.json() : form.equals("markdown") ? printout.markdown(false) : printout.text(), "");
        }
        Map<String, String> files = form.equals("csv") ? printout.csv() : printout.markdownFiles();
        Paper page = new Paper();
        KeptFiles.write(folder, files, replacing).forEach(file -> page.line("written: " + file.toString().replace('\\', '/')));
        return new Reply(status, page.text(), "");
    }
}
