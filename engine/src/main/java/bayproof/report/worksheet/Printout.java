package bayproof.report.worksheet;

import bayproof.review.Evaluation;
import bayproof.worksheet.Clearance;
import bayproof.worksheet.OwedLooks;
import bayproof.worksheet.PinVerdicts;
import bayproof.worksheet.PutBack;
import bayproof.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Something made to be taped up, carried to the vehicle or read by another program, in each form it can have. */
public final class Printout {
    /** File with the fuse labels at true size. */
    public static final String LABELS = "fuse-labels.svg";

    private final String what;
    private final String title;
    private final SheetHead sheetHead;
    private final String act;
    private final Clearance clearance;
    private final List<Page> pages;
    private final List<Table> tables;
    private final Block.Labels labels;
    private final String answer;

    private Printout(String what, String title, String act, Evaluation evaluation, Clearance clearance, List<Page> pages, List<Table> tables,
                     Block.Labels labels, String answer) {
        this.what = what;
        this.title = title;
        this.act = act;
        this.clearance = clearance;
        this.sheetHead = new SheetHead(evaluation.job(), clearance);
        this.pages = pages;
        this.tables = tables;
        this.labels = labels;
        this.answer = answer;
    }

    /** The bench sheet: five pages to build and set by. */
    public static Printout sheet(Evaluation evaluation, Worksheet sheet) {
        Page power = new PowerPage(sheet).page();
        List<Page> pages = List.of(new CutPage(sheet.cuts(), sheet.job().limits()).page(), new FusePage(sheet).page(), new PinPage(sheet).page(),
                power, new HoursPage(sheet.hours(), sheet.job().limits()).page());
        List<Table> tables = new ArrayList<>(SheetTables.of(sheet));
        tables.add(SheetTables.steps(power));
        Block.Labels labels = sheet.fuses().isEmpty() ? null : FusePage.labels(sheet);
        return new Printout("sheet", "BENCH SHEET", "build", evaluation, sheet.clearance(), pages, tables, labels, null);
    }

    /** The empty connector form. */
    public static Printout pinForm(Evaluation evaluation, Clearance clearance) {
        PinFormPages form = new PinFormPages(evaluation.job());
        return new Printout("pin-form", "PIN FORM", "join pins", evaluation, clearance, form.pages(), List.of(form.table()), null, null);
    }

    /**
     * A connector form that was filled in and judged.
     *
     * @param file the form as the user named it
     */
    public static Printout filled(Evaluation evaluation, Clearance clearance, List<PinVerdicts.Pin> pins, String file) {
        FilledPage page = new FilledPage(pins);
        return new Printout("pin-form-read", "PIN FORM READ BACK", "join pins", evaluation, clearance, List.of(page.page()), List.of(page.table()), null, page.answer() + " Form: " + file.replace('\\', '/') + ".");
    }

    /** What has to go back into the vehicle. */
    public static Printout putBack(Evaluation evaluation, Clearance clearance) {
        PutBackPage page = new PutBackPage(PutBack.of(evaluation.job()), evaluation.job().limits());
        return new Printout("put-back", "PUT BACK", "build", evaluation, clearance, List.of(page.page()), page.tables(), null, null);
    }

    /** What is looked at with eyes and hands. */
    public static Printout looks(Evaluation evaluation, Clearance clearance) {
        LooksPage looks = new LooksPage(OwedLooks.of(evaluation));
        return new Printout("looks", "LOOKS", "build", evaluation, clearance, looks.pages(), List.of(looks.table()), null, null);
    }

    private List<Block> head() {
        List<Block> head = new ArrayList<>(sheetHead.blocks(act.toUpperCase(Locale.ROOT)));
        if (answer != null) {
            head.add(0, new Block.Words("", answer));
        }
        return head;
    }

    /** As a terminal shows it, 80 columns wide. */
    public String text() {
        return TextForm.of(sheetHead.title(title), head(), sheetHead.running(act), pages);
    }

    /** @param withLabels whether the picture of the fuse labels lies beside it */
    public String markdown(boolean withLabels) {
        return MarkdownForm.of(sheetHead.title(title), head(), sheetHead.running(act), pages, withLabels && labels != null ? LABELS : null);
    }

    public String json() {
        return JsonForm.of(what, tag(), clearance, tables);
    }

    private String tag() {
        return Block.BLANK.equals(sheetHead.tag()) ? null : sheetHead.tag();
    }

    /** Texts by name of file: one table a file. */
    public Map<String, String> csv() {
        Map<String, String> files = new LinkedHashMap<>();
        tables.forEach(table -> files.put((table.name().startsWith(what) ? "" : what + "-") + table.name() + ".csv", CsvForm.of(table)));
        return files;
    }

    /** Texts by name of file: the sheet, and its fuse labels at true size. */
    public Map<String, String> markdownFiles() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(what + ".md", markdown(true));
        if (labels != null) {
            files.put(LABELS, FuseLabels.svg(labels));
        }
        return files;
    }
}
