package bayproof.read;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of the survey form. Its columns are the keys that the records of the vehicle sheet read, so that form and sheet
 * cannot drift apart.
 *
 * @param heading its name in the form
 * @param path    where its rows stand in the vehicle sheet
 * @param inner   key below which a row's last part stands, such as the positions of a space; empty where that stands in the entry
 *                itself; null where a row is an entry
 * @param kind    kind of item, where the rows are sources; otherwise null
 * @param hint    what to look for, a sentence or two
 * @param columns columns of the entry, then, behind a name of their own, those of its inner part
 * @param rows    what stands in the form already
 */
public record SurveyTable(String heading, List<String> path, String inner, String kind, String hint, List<Column> columns, List<List<String>> rows) {
    /** Column that names the entry. */
    public static final String ID = "id";
    private static final String SEEN_ON = "seen-on";

    /**
     * A column.
     *
     * @param name  key of the vehicle sheet, or the name of the entry
     * @param says  what it is
     * @param words what may stand there; empty where anything may
     * @param list  whether several names may stand there
     * @param deep  whether it belongs to the inner part
     */
    public record Column(String name, String says, List<String> words, boolean list, boolean deep) {
    }

    public SurveyTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** The tables in the order of a walk around the vehicle. */
    public static List<SurveyTable> all() {
        return List.of(
                entry("batteries", "supply.sources", "battery", Item.Battery.class, "From the label. Rest volts after four hours of standing, doors locked.",
                        List.of("mass", "clearance", "needs-clearance"), List.of(List.of("start-battery", "battery-tray"))),
                entry("alternators", "supply.sources", "alternator", Item.Alternator.class, "Rated current from its label; charging volts at the posts, engine warm.",
                        List.of(), List.of(List.of("alternator", "engine-front"))),
                entry("traction converters", "supply.sources", "traction-converter", Item.TractionConverter.class,
                        "A vehicle without an alternator: continuous current on the 12 V side, from the label or the papers. Touch nothing orange.", List.of(), List.of()),
                links(),
                entry("zones", "zones", null, Vehicle.Zone.class, "Parts of the vehicle that a panel divides. open-to: zones one can reach without a hole.",
                        List.of(), List.of(List.of("engine-bay", "engine-bay"), List.of("dash", "dash", "cabin"), List.of("cabin", "cabin-front"), List.of("cargo", "cargo"))),
                entry("places", "places", null, Vehicle.Place.class, "Battery posts, radio, each bolt that may serve as a ground, each spot where something may be mounted.",
                        List.of(), List.of(List.of("battery-tray", "engine-bay"), List.of("engine-front", "engine-bay"), List.of("radio-bay", "dash"), List.of("cargo-side", "cargo"),
                        List.of("cargo-floor-nut", "cargo"))),
                entry("pass-throughs", "pass-throughs", null, Vehicle.PassThrough.class, "Holes a cable can take, seen from both sides with a lamp.",
                        List.of("finish"), List.of(List.of("firewall-left", "engine-bay cabin"))),
                entry("routes", "routes", null, Vehicle.Route.class, "Ways from place to place; length by a string along the way, not through the air.",
                        List.of(), List.of(List.of("bay-left", "battery-tray firewall-left"), List.of("sill-left", "firewall-left cargo-side"))),
                nested("spaces", "spaces", "positions", "position", Vehicle.Space.class, Vehicle.Box.class,
                        "Clear size for a box, one row for each position of seats and lids. Width between the wheel housings where the box stands between them.", List.of(List.of("behind-seats", "cargo-side", "seats-back"), List.of("behind-seats", "", "seats-forward"))),
                waysIn(),
                nested("connectors", "connectors", "cavities", "cavity", Vehicle.Connector.class, Vehicle.Cavity.class,
                        "Plugs of the radio, one row for each wire. Family: shape and number of cavities. Speaker returns: one wire for each speaker, or one that "
                                + "several share. Color as seen, never from memory.",
                        List.of(List.of("radio-a", "", "", "4"), List.of("radio-a", "", "", "5"), List.of("radio-a", "", "", "7"), List.of("radio-a", "", "", "8"))),
                entry("outputs", "outputs", null, Vehicle.Output.class, "Feeds and signals the vehicle gives: turn-on wire, switched feeds, speaker pairs.",
                        List.of(), List.of()),
                tones(),
                entry("networks", "networks", null, Vehicle.Bus.class, "Data pairs the job may join; ohmmeter across the pair with the battery off.", List.of(), List.of()),
                entry("keep-outs", "keep-outs", null, Vehicle.KeepOut.class, "What cables and boxes stay away from: fuel, brake, exhaust, pedals, belts, bags.", List.of(),
                        List.of(List.of("fuel-line", "fuel"), List.of("brake-line", "brake"), List.of("exhaust", "exhaust"), List.of("pedals", "moving", "cabin"))));
    }

    /** Single values of the vehicle sheet by their path, in its order. */
    public static Map<String, Column> values() {
        Map<String, Column> values = new LinkedHashMap<>();
        columns(Vehicle.class, "", List.of(), false).forEach(column -> values.put(column.name(), column));
        columns(Vehicle.Supply.class, "supply.", List.of(), false).forEach(column -> values.put(column.name(), column));
        columns(Vehicle.Radio.class, "radio.", List.of(), false).forEach(column -> values.put(column.name(), column));
        columns(CabinSound.class, "cabin-sound.", List.of(), false).forEach(column -> values.put(column.name(), column));
        columns(Vehicle.Restraints.class, "restraints.", List.of(), false).forEach(column -> values.put(column.name(), column));
        return values;
    }

    private static SurveyTable entry(String heading, String path, String kind, Class<?> record, String hint, List<String> without, List<List<String>> rows) {
        return new SurveyTable(heading, List.of(path.split("\\.")), null, kind, hint, columns(record, "", without, false), rows);
    }

    private static SurveyTable links() {
        List<Column> columns = columns(Run.class, "", List.of(), false).stream()
                .filter(column -> List.of("from", "to", "size", "length", "metal", "insulation").contains(column.name())).toList();
        return new SurveyTable("links", List.of("supply", "links"), null, null, "The maker's own thick cables: alternator to battery, engine to body, battery to body.", columns,
                List.of(List.of("charge-lead", "alternator.output", "start-battery.positive"), List.of("engine-strap", "alternator.case", "body"),
                        List.of("body-strap", "start-battery.negative", "body")));
    }

    private static SurveyTable waysIn() {
        List<Column> columns = new ArrayList<>(List.of(new Column("opening", "the smallest opening on the way in", List.of("way-in"), false, true)));
        columns.addAll(columns(Vehicle.Opening.class, "", List.of(), true));
        return new SurveyTable("ways in", List.of("spaces"), "", null,
                "Clear height and width of the smallest opening that a box is carried through on its way into a space named above.", columns,
                List.of(List.of("behind-seats", "way-in")));
    }

    private static SurveyTable tones() {
        List<Column> columns = new ArrayList<>(List.of(new Column("step", "volume step", List.of("quiet", "loud"), false, true)));
        columns.addAll(columns(AudioTable.Tones.class, "", List.of(), true));
        return new SurveyTable("tones", List.of("outputs"), "", null,
                "Clean volts of each audio output named above at 40 Hz, 1 kHz and 10 kHz, one row for each of two volume steps.", columns, List.of());
    }

    private static SurveyTable nested(String heading, String path, String inner, String innerName, Class<?> outer, Class<?> deep, String hint, List<List<String>> rows) {
        List<Column> ofInner = columns(deep, "", List.of(), true);
        List<Column> columns = new ArrayList<>(columns(outer, "", List.of(SEEN_ON), false));
        columns.add(new Column(innerName, "name of the " + innerName, List.of(), false, true));
        columns.addAll(ofInner);
        // A row says once where it was seen: of its inner part where that has a place for it, otherwise of the whole entry.
        if (ofInner.stream().noneMatch(column -> column.name().equals(SEEN_ON))) {
            columns(outer, "", List.of(), false).stream().filter(column -> column.name().equals(SEEN_ON)).forEach(columns::add);
        }
        return new SurveyTable(heading, List.of(path.split("\\.")), inner, null, hint, columns, rows);
    }

    private static List<Column> columns(Class<?> record, String prefix, List<String> without, boolean deep) {
        List<Column> columns = new ArrayList<>();
        for (RecordComponent component : record.getRecordComponents()) {
            Field field = component.getAnnotation(Field.class);
            if (component.isAnnotationPresent(Inline.class)) {
                columns.addAll(columns(component.getType(), prefix, without, deep));
            } else if (field != null && component.getGenericType() instanceof ParameterizedType type && type.getRawType() != Map.class && !without.contains(field.key())) {
                Type value = type.getActualTypeArguments()[0];
                List<String> words = value == Boolean.class ? List.of("true", "false") : List.of(field.words());
                columns.add(new Column(prefix + field.key(), field.says(), words, value instanceof ParameterizedType, deep));
            }
        }
        return columns;
    }
}
