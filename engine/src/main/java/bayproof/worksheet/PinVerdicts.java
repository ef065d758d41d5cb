package bayproof.worksheet;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.read.Job;
import bayproof.read.PinForm;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Judges a filled connector form: each pin by what it reads, by its color, and against the other pins. */
public final class PinVerdicts {
    /** Wires that have a function in common: a pair for each speaker. */
    private static final int WIRES_A_SPEAKER = 2;

    /** What is said of a pin. */
    public enum Kind {
        READING("does not fit"), FUNCTION("function differs"), TWICE("two pins claim one function"), COLOR("color differs"), OPEN("not shown");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** One remark, with the place in the form it speaks about. */
    public record Remark(Kind kind, String say, At at) {
    }

    /**
     * One pin.
     *
     * @param row     its row of the form; null where the form has none
     * @param joined  whether the plan joins it
     * @param remarks nothing where it fits
     */
    public record Pin(String id, PinForm.Row row, boolean joined, List<Remark> remarks) {
        public boolean fits() {
            return remarks.isEmpty();
        }

        /** Whether something is wrong with it, not only open. */
        public boolean wrong() {
            return remarks.stream().anyMatch(remark -> remark.kind() != Kind.OPEN);
        }

        /** Whether it stands against joining the pins of the plan. */
        public boolean counts() {
            return wrong() || joined && !fits();
        }
    }

    private final Map<String, PinForms.Pin> known = new LinkedHashMap<>();
    private final Map<String, PinForm.Row> rows;
    private final Limits limits;

    private PinVerdicts(Job job, Map<String, PinForm.Row> rows) {
        PinForms.of(job).forEach(connector -> connector.pins().forEach(pin -> known.put(pin.id(), pin)));
        this.rows = rows;
        this.limits = job.limits();
    }

    /** Every pin of the form in its order, then those that the plan joins and the form leaves out. */
    public static List<Pin> of(Job job, Map<String, PinForm.Row> rows) {
        PinVerdicts verdicts = new PinVerdicts(job, rows);
        List<Pin> pins = new ArrayList<>();
        rows.values().forEach(row -> pins.add(verdicts.pin(row)));
        verdicts.known.values().stream().filter(pin -> pin.use() != null && !rows.containsKey(pin.id()))
                .forEach(pin -> pins.add(new Pin(pin.id(), null, true, List.of(new Remark(Kind.OPEN, "the plan joins it and the form has no row for it", pin.use().at())))));
        return pins;
    }

    private Pin pin(PinForm.Row row) {
        PinForms.Pin sheet = known.get(row.id());
        List<Remark> remarks = new ArrayList<>();
        if (sheet == null) {
            remarks.add(new Remark(Kind.FUNCTION, "the vehicle sheet has no such cavity", row.at()));
        } else {
            color(row, sheet, remarks);
            function(row, sheet, remarks);
        }
        PinFunctions.Function function = PinFunctions.built().get(row.function().orElse(""));
        if (function == null) {
            remarks.add(new Remark(Kind.OPEN, "no function is written", row.at()));
        } else {
            String other = otherFunctions(row, function);
            function.limits().forEach((state, limit) -> reading(row, state, limits.named(limit), other, remarks));
            if (function.tone() && !row.tone().isGiven()) {
                remarks.add(new Remark(Kind.OPEN, "tone: no speaker is written", row.at()));
            }
            twice(row, function, remarks);
        }
        return new Pin(row.id(), row, sheet != null && sheet.use() != null, List.copyOf(remarks));
    }

    private static void color(PinForm.Row row, PinForms.Pin sheet, List<Remark> remarks) {
        if (!row.color().isGiven()) {
            remarks.add(new Remark(Kind.OPEN, "no color is written", row.at()));
        } else if (sheet.color().isGiven() && !plain(row.color()).equals(plain(sheet.color()))) {
            remarks.add(new Remark(Kind.COLOR, "the wire is " + row.color().orElse("") + ", the vehicle sheet says " + sheet.color().orElse(""),
                    row.color().atOr(row.at())));
        }
    }

    /** Colors are written in several ways: gray/black, Grey-Black. */
    private static String plain(Shown<String> color) {
        return color.orElse("").toLowerCase(Locale.ROOT).strip().replaceAll("[\\s/_-]+", "-").replace("grey", "gray");
    }

    private static void function(PinForm.Row row, PinForms.Pin sheet, List<Remark> remarks) {
        Shown<String> wanted = sheet.use() != null && sheet.use().function().isGiven() ? sheet.use().function() : sheet.function();
        if (row.function().isGiven() && wanted.isGiven() && !row.function().orElse("").equals(wanted.orElse(""))) {
            remarks.add(new Remark(Kind.FUNCTION, (sheet.use() != null ? "the plan joins it as " : "the vehicle sheet says ") + wanted.orElse("")
                    + ", the form says " + row.function().orElse(""), row.function().atOr(row.at())));
        }
    }

    /** What the readings of a row would prove instead, as a clause; nothing where they prove no other function. */
    private String otherFunctions(PinForm.Row row, PinFunctions.Function claimed) {
        List<String> others = PinFunctions.built().values().stream().filter(function -> function != claimed && !function.tone())
                .filter(function -> function.limits().entrySet().stream().allMatch(each -> isWithin(reading(row, each.getKey()), limits.named(each.getValue()))))
                .map(PinFunctions.Function::name).toList();
        return others.isEmpty() ? "" : "; it reads like " + String.join(" or ", others);
    }

    /** What was read in a state of the vehicle. */
    private static Shown<Double> reading(PinForm.Row row, String state) {
        return switch (state) {
            case "asleep" -> row.asleepVolts();
            case "ignition-on" -> row.ignitionVolts();
            case "lamps-on" -> row.lampsVolts();
            case "radio-on" -> row.radioVolts();
            case "supply-off" -> row.offOhms();
            default -> throw new IllegalArgumentException("the form has no state " + state);
        };
    }

    private static boolean isWithin(Shown<Double> reading, Limit limit) {
        return reading.map(value -> value >= limit.low() && value <= limit.high()).orElse(false);
    }

    private static void reading(PinForm.Row row, String state, Limit limit, String other, List<Remark> remarks) {
        Shown<Double> read = reading(row, state);
        if (!read.isGiven()) {
            remarks.add(new Remark(Kind.OPEN, state + ": no reading", row.at()));
            return;
        }
        if (!isWithin(read, limit)) {
            remarks.add(new Remark(Kind.READING, state + ": reads " + printed(read.orElse(Double.NaN), limit) + ", must read " + printed(limit.low(), limit) + " to "
                    + printed(limit.high(), limit) + other, read.atOr(row.at())));
        }
    }

    private static String printed(double value, Limit limit) {
        return value >= PinForm.OPEN_OHMS ? "open" : Units.print(value, Dimension.ofSymbol(limit.unit()));
    }

    /** More pins of a connector say that they are one thing than the vehicle sheet has of it. */
    private void twice(PinForm.Row row, PinFunctions.Function function, List<Remark> remarks) {
        if (function.tone()) {
            String speaker = row.tone().orElse("");
            List<String> claim = sameConnector(row).filter(other -> !speaker.isEmpty() && other.tone().orElse("").equals(speaker)).map(PinForm.Row::id).toList();
            if (claim.size() > WIRES_A_SPEAKER) {
                remarks.add(new Remark(Kind.TWICE, "speaker " + speaker + " is claimed by " + String.join(", ", claim) + "; a speaker has "
                        + WIRES_A_SPEAKER + " wires", row.tone().atOr(row.at())));
            }
            return;
        }
        List<String> claim = sameConnector(row).filter(other -> other.function().orElse("").equals(function.name())).map(PinForm.Row::id).toList();
        long seen = known.values().stream().filter(pin -> connector(pin.id()).equals(connector(row.id())) && pin.function().orElse("").equals(function.name())).count();
        if (claim.size() > Math.max(1, seen)) {
            remarks.add(new Remark(Kind.TWICE, function.name() + " is claimed by " + String.join(", ", claim) + "; the vehicle sheet has "
                    + (seen == 0 ? "none" : seen == 1 ? "one" : String.valueOf(seen)), row.function().atOr(row.at())));
        }
    }

    private Stream<PinForm.Row> sameConnector(PinForm.Row row) {
        return rows.values().stream().filter(other -> connector(other.id()).equals(connector(row.id())));
    }

    private static String connector(String pin) {
        return pin.substring(0, pin.indexOf('.'));
    }
}
