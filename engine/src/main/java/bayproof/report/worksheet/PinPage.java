package bayproof.report.worksheet;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.read.Plan;
import bayproof.report.Amounts;
import bayproof.report.Days;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.MeteredOutput;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.PinForms;
import bayproof.worksheet.PinFunctions;
import bayproof.worksheet.SpeakerLines;
import bayproof.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Page 3: what each joined pin and each speaker cable must read. */
final class PinPage {
    private final Worksheet sheet;
    private final Limits limits;

    PinPage(Worksheet sheet) {
        this.sheet = sheet;
        this.limits = sheet.job().limits();
    }

    Page page() {
        List<Block> blocks = new ArrayList<>(SheetHead.cautions("Yellow plugs and yellow sleeves belong to the restraint system: no meter, no tip, no tap.",
                "Meter only, never a test lamp. A tip between two pins makes a short: use thin tips, from behind."));
        Set<String> functions = new LinkedHashSet<>();
        for (PinForms.Connector connector : sheet.connectors()) {
            List<List<String>> rows = new ArrayList<>();
            connector.pins().stream().filter(pin -> pin.use() != null).forEach(pin -> pin(pin, rows, functions));
            if (!rows.isEmpty()) {
                blocks.add(new Block.Heading(connector.id() + ", " + Say.text(connector.family())));
                blocks.add(new Block.Grid(List.of("", "pin", "color", "function", "state", "must read", "reads"), rows));
            }
        }
        if (functions.isEmpty()) {
            blocks.add(new Block.Words("", "The plan joins no factory pin."));
        } else {
            blocks.add(new Block.Heading("MUST NOT READ"));
            functions.forEach(name -> mustNot(blocks, PinFunctions.built().get(name)));
        }
        speakers(blocks);
        return new Page("3 PINS AND SPEAKERS", blocks);
    }

    private void pin(PinForms.Pin pin, List<List<String>> rows, Set<String> functions) {
        Plan.PinUse use = pin.use();
        PinFunctions.Function function = PinFunctions.built().get(use.function().orElse(""));
        List<String> states = new ArrayList<>();
        List<String> must = new ArrayList<>();
        List<String> blanks = new ArrayList<>();
        if (function != null) {
            functions.add(function.name());
            function.limits().forEach((state, limit) -> {
                states.add(state);
                must.add(Amounts.figure(limits.named(limit)));
                boolean read = use.identified().state().orElse("").equals(state) && use.identified().reading().isGiven();
                blanks.add(read ? use.identified().reading().map(reading -> Units.print(reading.si(), reading.dimension())).orElse("") : Block.BLANK);
            });
        }
        rows.add(List.of(Block.BOX, pin.cavity(), Say.text(use.color()), Say.text(use.function()), states.isEmpty() ? Block.BLANK : String.join("\n", states),
                must.isEmpty() ? Block.BLANK : String.join("\n", must), blanks.isEmpty() ? Block.BLANK : String.join("\n", blanks)));
    }

    static void mustNot(List<Block> blocks, PinFunctions.Function function) {
        blocks.add(new Block.Words(function.name() + ":", function.mustNot() + "."));
    }

    // speakers

    private void speakers(List<Block> blocks) {
        blocks.add(new Block.Heading("SPEAKER CABLES, at the amplifier's end, cable off the amplifier"));
        if (sheet.speakers().isEmpty()) {
            blocks.add(new Block.Words("", "The plan wires no speaker to an amplifier."));
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (SpeakerLines.Line line : sheet.speakers()) {
            rows.add(List.of(Block.BOX, line.output(), Say.text(line.net()), Say.amount(line.loadOhms(), Dimension.RESISTANCE),
                    Say.amount(line.minimumOhms(), Dimension.RESISTANCE), must(line.meter()), Block.BLANK));
        }
        blocks.add(new Block.Grid(List.of("", "output", "coils: + in series,\n| in parallel", "nominal\nload", "least\nload", "meter must\nread", "reads"), rows));
        blocks.add(new Block.Words("", "A meter reads the coils' DC resistance, which is less than the nominal load, and the cable. Touch the tips together first and take that reading off. "
                + "The windows hold for coils and cable at " + Amounts.figure(limits.named("coil-temperature")) + "."));
        Limit least = limits.named("least-impedance-share");
        blocks.add(new Block.Words("", "For information: the impedance of a speaker may fall to " + Say.amount(least.value(), Dimension.RATIO) + " of its nominal one (" + least.source()
                + "). So these loads may fall to: " + dips(least.value()) + ". An amplifier's least load is stated for nominal ones."));
        doubts(blocks);
        blocks.add(new Block.Words("MUST NOT READ", "near 0 ohm (short or pinched cable); open (a coil or joint is open, or a capacitor is in the way); anything to ground; "
                + "twice what the other side reads (one of two parallel coils is open)."));
    }

    /** Windows that rest on nominal impedances, and what a reading cannot exclude. */
    private void doubts(List<Block> blocks) {
        List<String> wide = sheet.speakers().stream().filter(line -> line.meter() != null && line.meter().expectedOhms() instanceof Shown.Assumed).map(SpeakerLines.Line::output).toList();
        if (!wide.isEmpty()) {
            blocks.add(new Block.Words("WIDE", String.join(", ", wide) + ": the DC resistance of a coil is not written, so its window is "
                    + Amounts.figure(limits.named("coil-resistance")) + " of the nominal impedance. Read each coil before it is fitted and write it into the plan."));
        }
        Map<String, List<String>> alike = new LinkedHashMap<>();
        for (SpeakerLines.Line line : sheet.speakers()) {
            String read = line.meter() == null ? "" : line.meter().doubtful().orElse("");
            String any = line.meter() == null ? "" : line.meter().alike().orElse("");
            if (!read.isEmpty()) {
                blocks.add(new Block.Words("CANNOT TELL", line.output() + ": the reading written in the plan fits these as well: " + read + ". Lift one branch and read again."));
            } else if (!any.isEmpty()) {
                alike.computeIfAbsent(any, same -> new ArrayList<>()).add(line.output());
            }
        }
        alike.forEach((faults, outputs) -> blocks.add(new Block.Words("CANNOT TELL", String.join(", ", outputs) + ": a reading in this window does not exclude: " + faults
                + ". Lift one branch and read again.")));
    }

    /** Least impedance of each load, outputs of the same load together. */
    private String dips(double share) {
        Map<String, List<String>> outputs = new LinkedHashMap<>();
        for (SpeakerLines.Line line : sheet.speakers()) {
            outputs.computeIfAbsent(Say.amount(line.loadOhms().map(ohms -> ohms * share), Dimension.RESISTANCE), any -> new ArrayList<>()).add(line.output());
        }
        return outputs.entrySet().stream().map(one -> one.getKey() + " (" + String.join(", ", one.getValue()) + ")").collect(Collectors.joining("; "));
    }

    /** The window of the meter's reading with its wire; a blank where a length or a size is missing. */
    private static String must(MeteredOutput meter) {
        return meter == null || !meter.lowOhms().isGiven() || !meter.highOhms().isGiven() ? Block.BLANK
                : Say.amount(meter.lowOhms(), Dimension.RESISTANCE) + "\nto " + Say.amount(meter.highOhms(), Dimension.RESISTANCE);
    }
}
