package bayproof.report.worksheet;

import bayproof.report.Plain;
import bayproof.worksheet.PinVerdicts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a filled connector form says. */
final class FilledPage {
    private static final int MOST_FITTING = 200;

    private final List<PinVerdicts.Pin> pins;

    FilledPage(List<PinVerdicts.Pin> pins) {
        this.pins = pins;
    }

    /** The answer in one line. */
    String answer() {
        long wrong = pins.stream().filter(PinVerdicts.Pin::wrong).count();
        long open = pins.stream().filter(pin -> !pin.wrong() && !pin.fits()).count();
        String what = wrong > 0 ? "DO NOT JOIN THESE PINS YET" : pins.stream().anyMatch(PinVerdicts.Pin::counts) ? "NOT EVERY PIN IS SHOWN YET" : "EVERY PIN THAT THE PLAN JOINS FITS";
        return what + " - " + (wrong == 1 ? "1 pin does" : wrong + " pins do") + " not fit, " + open + " not shown, "
                + pins.stream().filter(PinVerdicts.Pin::fits).count() + " fit.";
    }

    Page page() {
        List<Block> blocks = new ArrayList<>();
        List<List<String>> wrong = new ArrayList<>();
        List<List<String>> open = new ArrayList<>();
        for (PinVerdicts.Pin pin : pins) {
            for (PinVerdicts.Remark remark : pin.remarks()) {
                (remark.kind() == PinVerdicts.Kind.OPEN ? open : wrong).add(List.of(pin.id(), remark.kind().word(), remark.say(),
                        pin.row() == null ? "" : remark.at().line() + ":" + remark.at().column()));
            }
        }
        List<String> head = List.of("pin", "outcome", "why", "line:column");
        if (!wrong.isEmpty()) {
            blocks.add(new Block.Heading("DOES NOT FIT"));
            blocks.add(new Block.Grid(head, wrong));
        }
        if (!open.isEmpty()) {
            blocks.add(new Block.Heading("NOT SHOWN"));
            blocks.add(new Block.Grid(head, open));
        }
        String fit = pins.stream().filter(PinVerdicts.Pin::fits).map(PinVerdicts.Pin::id).limit(MOST_FITTING).collect(Collectors.joining(", "));
        blocks.add(new Block.Heading("FITS"));
        blocks.add(new Block.Words("", fit.isEmpty() ? "none" : fit + "."));
        blocks.add(new Block.Words("", "A pin fits when every reading its function is proved by lies between its limits, its color is that of the vehicle sheet, "
                + "and no other pin claims the same. It says nothing of the wire behind it."));
        return new Page(Plain.capital("PIN FORM READ BACK"), blocks);
    }

    Table table() {
        Table table = new Table("pins").text("pin", "outcome", "why", "line", "column");
        for (PinVerdicts.Pin pin : pins) {
            if (pin.fits()) {
                table.row(pin.id(), "fits", null, null, null);
            }
            for (PinVerdicts.Remark remark : pin.remarks()) {
                boolean inForm = pin.row() != null;
                table.row(pin.id(), remark.kind().word(), remark.say(), inForm ? String.valueOf(remark.at().line()) : null, inForm ? String.valueOf(remark.at().column()) : null);
            }
        }
        return table;
    }
}
