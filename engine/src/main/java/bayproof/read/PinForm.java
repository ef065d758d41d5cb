package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A connector form as somebody filled it in: a table with one row a pin, and a column for what it reads in each state of
 * the vehicle.
 */
public final class PinForm {
    /** Columns that tell what has to be read; they are printed on the form and not read back. */
    public static final String MUST_READ = "must-read";
    public static final String MUST_NOT_READ = "must-not-read";

    /** States of the vehicle in the order of the form, by the word that pins are proved with. */
    public static final List<String> STATES = List.of("asleep", "ignition-on", "lamps-on", "radio-on", "supply-off");

    /** What stands for a reading beyond the meter's range, which is written {@code open} or {@code OL}. */
    public static final double OPEN_OHMS = 1e6;

    /** One pin of the form. */
    public record Row(String id, String path, At at,
                      @Field(key = "function", says = "function of the pin", words = {"constant-supply", "switched-supply", "ground",
                          "illumination", "turn-on", "speaker", "can-high", "can-low", "lin"}) Shown<String> function,
                      @Field(key = "color", says = "color of the wire as seen") Shown<String> color,
                      @Field(key = "asleep", says = "volts while the vehicle is asleep", in = Dimension.VOLTAGE, zero = true)
                      Shown<Double> asleepVolts,
                      @Field(key = "ignition-on", says = "volts with the ignition on, engine off", in = Dimension.VOLTAGE, zero = true)
                      Shown<Double> ignitionVolts,
                      @Field(key = "lamps-on", says = "volts with the lamps on, undimmed", in = Dimension.VOLTAGE, zero = true)
                      Shown<Double> lampsVolts,
                      @Field(key = "radio-on", says = "volts with the radio on", in = Dimension.VOLTAGE, zero = true)
                      Shown<Double> radioVolts,
                      @Field(key = "supply-off", says = "resistance with the battery off", in = Dimension.RESISTANCE, zero = true)
                      Shown<Double> offOhms,
                      @Field(key = "tone", says = "speaker that a short tone was heard from") Shown<String> tone) {
    }

    private PinForm() {
    }

    /**
     * Reads a filled form.
     *
     * @param vehicle the vehicle sheet whose connectors the form is of
     * @return its rows by pin, in the order of the form
     * @throws UnusableInput when anything in it cannot be used; all mistakes are named together, each with its place
     */
    public static Map<String, Row> read(Path file, Vehicle vehicle) throws UnusableInput {
        MapTree table = CsvReader.read(TreeReader.bytes(file, file.toString()), file.toString(), List.of(Row.class));
        Problems problems = new Problems();
        Binder binder = new Binder(problems, new Readings());
        Map<String, Row> rows = new LinkedHashMap<>();
        for (Entry entry : table.entries().values()) {
            String id = entry.key();
            if (!Binder.DOTTED_ID.matcher(id).matches()) {
                problems.add(entry.keyAt(), "\"" + Problems.shortened(id) + "\" is not a pin.", "Write the connector and the cavity, such as radio-a.4.");
            } else if (!vehicle.connectors().containsKey(id.substring(0, id.indexOf('.')))) {
                problems.unknown(entry.keyAt(), "a connector of the vehicle sheet", id.substring(0, id.indexOf('.')), vehicle.connectors().keySet());
            } else {
                rows.put(id, binder.named(Row.class, opened((MapTree) entry.value()), "form." + id, id, entry.keyAt(), MUST_READ, MUST_NOT_READ));
            }
        }
        if (rows.isEmpty()) {
            problems.add(table.at(), "no pin stands in this form.", "Fill in the form that bayproof sheet PLAN --pins prints.");
        }
        problems.throwIfAny();
        return Collections.unmodifiableMap(rows);
    }

    private static MapTree opened(MapTree row) {
        boolean open = row.get("supply-off") instanceof ScalarTree read && List.of("open", "ol").contains(read.text().toLowerCase(Locale.ROOT));
        return open ? row.with("supply-off", new ScalarTree("1000 kohm", false, row.get("supply-off").at())) : row;
    }
}
