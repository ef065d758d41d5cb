package bayproof.report.worksheet;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.read.Job;
import bayproof.read.PinForm;
import bayproof.report.Amounts;
import bayproof.units.Dimension;
import bayproof.worksheet.PinForms;
import bayproof.worksheet.PinFunctions;
import java.util.ArrayList;
import java.util.List;

/** The connector form: empty boxes for each pin, and what each function must read. */
final class PinFormPages {
    /** A box for a reading. */
    private static final String CELL = ".....";
    private static final String NOT_ASKED = "-";

    private final List<PinForms.Connector> connectors;
    private final Limits limits;

    PinFormPages(Job job) {
        this.connectors = PinForms.of(job);
        this.limits = job.limits();
    }

    List<Page> pages() {
        List<Block> form = new ArrayList<>(SheetHead.cautions("Yellow plugs and yellow sleeves belong to the restraint system: no meter, no tip, no tap.",
                "Meter only, never a test lamp, never a current into a wire nobody knows. Resistance only with the battery off."));
        form.add(new Block.Words("", "Write what this car shows, not what another one had. The function in the form is that of the vehicle sheet; correct it where the readings say otherwise. "
                + "An open circuit is written as open. For a speaker, play one short tone into the pair and write the speaker it was heard from."));
        if (connectors.isEmpty()) {
            form.add(new Block.Words("", "The vehicle sheet names no connector: there is no form to fill."));
        }
        for (PinForms.Connector connector : connectors) {
            form.add(new Block.Heading(connector.id() + ", " + Say.text(connector.family())));
            form.add(new Block.Grid(List.of("pin", "color", "function", "asleep\nV", "ignition\non, V", "lamps\non, V", "radio\non, V", "supply\noff, ohm", "tone"),
                    connector.pins().stream().map(PinFormPages::row).toList()));
        }
        form.add(new Block.Words("", "Read by " + Block.BLANK + "   meter " + Block.BLANK + "   date, time " + Block.BLANK));
        return List.of(new Page("PIN FORM", form), must());
    }

    private static List<String> row(PinForms.Pin pin) {
        PinFunctions.Function function = pin.reads();
        List<String> row = new ArrayList<>(List.of(pin.cavity(), Say.text(pin.color()), Say.text(pin.function())));
        for (String state : PinForm.STATES) {
            row.add(function == null || function.limits().containsKey(state) ? CELL : NOT_ASKED);
        }
        row.add(function == null || function.tone() ? CELL : NOT_ASKED);
        return row;
    }

    private Page must() {
        List<Block> blocks = new ArrayList<>();
        for (PinFunctions.Function function : PinFunctions.built().values()) {
            blocks.add(new Block.Heading(function.name() + ": " + function.says()));
            List<List<String>> rows = new ArrayList<>();
            function.limits().forEach((state, name) -> {
                Limit limit = limits.named(name);
                rows.add(List.of(state, Amounts.figure(limit), limit.source()));
            });
            blocks.add(new Block.Grid(List.of("state", "must read", "source"), rows));
            blocks.add(new Block.Words("other tip:", function.across() + "."));
            blocks.add(new Block.Words("must not read:", function.mustNot() + "."));
        }
        return new Page("WHAT EACH FUNCTION READS", blocks);
    }

    /** The form as a table to be filled in a spreadsheet and read back. */
    Table table() {
        Table table = new Table("pin-form").text("id", "function", "color").number("asleep", Dimension.VOLTAGE).number("ignition-on", Dimension.VOLTAGE)
                .number("lamps-on", Dimension.VOLTAGE).number("radio-on", Dimension.VOLTAGE).number("supply-off", Dimension.RESISTANCE)
                .text("tone", PinForm.MUST_READ, PinForm.MUST_NOT_READ);
        for (PinForms.Connector connector : connectors) {
            for (PinForms.Pin pin : connector.pins()) {
                PinFunctions.Function function = pin.reads();
                table.row(pin.id(), pin.function(), pin.color(), null, null, null, null, null, null, function == null ? null : must(function),
                        function == null ? null : function.mustNot());
            }
        }
        return table;
    }

    private String must(PinFunctions.Function function) {
        List<String> parts = new ArrayList<>();
        function.limits().forEach((state, limit) -> parts.add(state + " " + Amounts.figure(limits.named(limit))));
        if (function.tone()) {
            parts.add("tone: name of the speaker");
        }
        return String.join("; ", parts);
    }
}
