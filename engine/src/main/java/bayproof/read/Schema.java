package bayproof.read;

import bayproof.demand.Limit;
import bayproof.read.Layout.Form;
import bayproof.read.Layout.Slot;
import bayproof.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * JSON Schemas (draft 2020-12) of the files, for completion and hover text in editors, from the same records that read them.
 *
 * <p>A general generator sees Java types; what a file may hold stands in {@link Field} and in the reader's own rules (a
 * part behind an item, inlined keys, {@code unknown} in place of anything), each of which would be an extension of it
 * and as long as this class.
 *
 * <p>A schema refuses nothing that the reader takes, short of odd spellings of digits. What is written out of place is refused by
 * both; whether a name exists and whether a unit is known, only the reader knows.
 */
final class Schema {
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";
    private static final String NOT_SHOWN = "unknown|cannot-be-seen";
    /** A number, or a fraction, and something behind it that is no number. */
    private static final String QUANTITY = "^\\s*[+\u2212-]?(?:(?:[0-9]+[\\s-]+)?[0-9]+/)?[0-9]*\\.?[0-9]+\\s*[^0-9.,/\\s].*$";
    private static final String SIZE = "^\\s*[0-9]+(\\.[0-9]+)?\\s*[-A-Za-z].*$|^\\s*[1-4]/0.*$|^\\s*[A-Za-z]+\\.?\\s*#?\\s*[0-9].*$";
    private static final String TABLE = "\\.[cC][sS][vV]$";
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]+)\"");

    private final Map<String, Object> groups = new TreeMap<>();
    private final Map<String, Class<?>> named = new HashMap<>();

    private Schema() {
    }

    /** The schemas by the name of their file. */
    static Map<String, Map<String, Object>> all() {
        Map<String, Map<String, Object>> all = new LinkedHashMap<>();
        all.put("plan", new Schema().plan());
        all.put("vehicle", new Schema().vehicle());
        all.put("parts", new Schema().parts());
        all.put("limits", new Schema().limits());
        all.put("readings", new Schema().readings());
        all.put("choices", new Schema().choices());
        all.put("waivers", new Schema().waivers());
        return Collections.unmodifiableMap(all);
    }

    // files

    private Map<String, Object> plan() {
        Map<String, Object> keys = head("plan");
        keys.putAll(keys(Plan.class));
        keys.put("items", orTable(names("planned items", item(true))));
        keys.put("runs", orTable(keys.get("runs")));
        keys.put("pins", orTable(keys.get("pins")));
        keys.put("inspections", orTable(keys.get("inspections")));
        keys.put("pass-throughs", passThroughs("what the plan does to the holes of the vehicle"));
        return file("plan", keys, List.of("bayproof"));
    }

    private Map<String, Object> vehicle() {
        Map<String, Object> keys = head("vehicle");
        keys.putAll(keys(Vehicle.class));
        Map<String, Object> supply = group(Vehicle.Supply.class);
        inside(supply).put("sources", names("sources of the vehicle: its battery and what charges it", item(true)));
        keys.put("pass-throughs", passThroughs("holes between the zones"));
        return file("vehicle sheet", keys, List.of("bayproof", "kind"));
    }

    private Map<String, Object> parts() {
        Map<String, Object> keys = head("parts");
        keys.put("version", described("version of the book", map("type", List.of("string", "number", "null"))));
        keys.put("date", described("date of the book", map("type", List.of("string", "null"))));
        keys.put("parts", orTable(names("parts by their names", item(false))));
        return file("parts book", keys, List.of("bayproof", "kind"));
    }

    private Map<String, Object> readings() {
        Map<String, Object> keys = head("readings");
        keys.put("readings", described("values measured on the vehicle", map("type", List.of("object", "null"),
                "additionalProperties", reference(Readings.Reading.class))));
        return file("readings", keys, List.of("bayproof", "kind"));
    }

    private Map<String, Object> choices() {
        Map<String, Object> keys = head("choices");
        keys.putAll(keys(Choices.Decided.class));
        keys.put("known", described("what is already known of the new job, in the keys of a plan", map("type", List.of("object", "null"))));
        return file("choices", keys, List.of("bayproof", "kind"));
    }

    private Map<String, Object> waivers() {
        Map<String, Object> keys = head("waivers");
        keys.put("waivers", described("decisions to accept a verdict for a time", map("type", List.of("object", "null"),
                "additionalProperties", reference(Waiver.class))));
        return file("waivers", keys, List.of("bayproof", "kind"));
    }

    private Map<String, Object> limits() {
        Map<String, Object> names = new LinkedHashMap<>();
        for (Limit limit : LimitsReader.defaults().all()) {
            String name = limit.name();
            Map<String, Object> keys = new LinkedHashMap<>();
            keys.put(LimitsReader.word(limit.kind()), described(limit.says() + "; built in: " + LimitsReader.builtIn(limit), map()));
            keys.put("reason", described("why the shop uses a figure of its own", map("type", "string")));
            LimitsReader.KEYS.forEach(key -> keys.putIfAbsent(key, map()));
            names.put(name, described(limit.says(), map("type", "object", "properties", keys, "required", List.of("reason"),
                    "additionalProperties", false)));
        }
        Map<String, Object> keys = head("limits");
        keys.put("limits", described("figures of the shop's own in place of those built in", map("type", "object", "properties", names,
                "additionalProperties", false)));
        return file("shop limits", keys, List.of("bayproof", "kind"));
    }

    private static Map<String, Object> head(String kind) {
        return map("bayproof", described("version of the file's form", map("const", 1)),
                "kind", described("kind of file", map("const", kind)));
    }

    private Map<String, Object> file(String title, Map<String, Object> keys, List<String> required) {
        Map<String, Object> schema = map("$schema", DRAFT, "title", "Bayproof " + title, "type", "object", "properties", keys,
                "required", required, "additionalProperties", false);
        if (!groups.isEmpty()) {
            schema.put("$defs", groups);
        }
        return schema;
    }

    private Map<String, Object> passThroughs(String says) {
        return names(says, reference(Vehicle.PassThrough.class));
    }

    // items

    /** An item by its kind; where a part may stand behind it, any key of any kind may stand there. */
    private Map<String, Object> item(boolean partBehind) {
        List<Object> choices = new ArrayList<>();
        Item.KINDS.forEach((word, type) -> {
            Map<String, Object> keys = map("kind", map());
            if (partBehind) {
                keys.put("part", map());
            }
            keys.putAll(keys(type));
            choices.add(map("if", map("properties", map("kind", map("const", word)), "required", List.of("kind")),
                    "then", map("properties", keys, "additionalProperties", false)));
        });
        Map<String, Object> keys = map("kind", described("what kind of thing it is", map("enum", List.copyOf(Item.KINDS.keySet()))));
        Object needed = map();
        if (partBehind) {
            keys.put("part", described("its part in the parts book, which says the rest", map("type", "string")));
            Map<String, Object> any = map("kind", map(), "part", map());
            any.putAll(keysOfAnyKind());
            choices.add(map("if", map("not", map("required", List.of("kind"))), "then", map("properties", any, "additionalProperties", false)));
            needed = map("anyOf", List.of(map("required", List.of("part")), map("required", List.of("kind"))));
        } else {
            // A part without a kind adds to the part of its name in another book.
            choices.add(map("if", map("not", map("required", List.of("kind"))), "then", map("properties", keysOfAnyKind(), "additionalProperties", false)));
        }
        Map<String, Object> item = map("type", "object", "properties", keys);
        item.putAll(cast(needed));
        item.put("allOf", choices);
        groups.put("item", item);
        return map("$ref", "#/$defs/item");
    }

    private Map<String, Object> keysOfAnyKind() {
        Map<String, Set<Object>> forms = new TreeMap<>();
        Map<String, Set<String>> says = new TreeMap<>();
        for (Class<? extends Item> type : Item.KINDS.values()) {
            keys(type).forEach((key, schema) -> {
                Map<String, Object> form = new LinkedHashMap<>(cast(schema));
                says.computeIfAbsent(key, none -> new LinkedHashSet<>()).add((String) form.remove("description"));
                forms.computeIfAbsent(key, none -> new LinkedHashSet<>()).add(form);
            });
        }
        Map<String, Object> keys = new LinkedHashMap<>();
        forms.forEach((key, different) -> keys.put(key, described(String.join(" / ", says.get(key)),
                different.size() == 1 ? cast(different.iterator().next()) : map("anyOf", List.copyOf(different)))));
        return keys;
    }

    // groups

    private Map<String, Object> keys(Class<?> type) {
        Map<String, Object> keys = new LinkedHashMap<>();
        Layout.of(type).forEach((key, slot) -> keys.put(key, value(slot)));
        return keys;
    }

    /** The schema of a record, kept once among the definitions. */
    private Map<String, Object> group(Class<?> type) {
        String name = name(type);
        if (named.putIfAbsent(name, type) != null && named.get(name) != type) {
            throw new IllegalStateException("two records are both called " + name);
        }
        if (!groups.containsKey(name)) {
            List<String> forms = type == Vouched.class ? List.of("object", "string", "boolean", "null") : List.of("object", "string", "null");
            groups.put(name, map("type", forms, "pattern", "^unknown$", "properties", keys(type),
                    "additionalProperties", false));
        }
        return cast(groups.get(name));
    }

    private Map<String, Object> reference(Class<?> type) {
        group(type);
        return map("$ref", "#/$defs/" + name(type));
    }

    private static String name(Class<?> type) {
        return type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    private static Map<String, Object> names(String says, Object each) {
        return described(says, map("type", List.of("object", "string", "null"), "pattern", "^unknown$",
                "propertyNames", map("anyOf", List.of(map("pattern", "^(" + Binder.ID + ")$"), map("pattern", "^(" + Binder.DOTTED_ID + ")$"))),
                "additionalProperties", each));
    }

    private static Map<String, Object> orTable(Object names) {
        Map<String, Object> schema = new LinkedHashMap<>(cast(names));
        schema.put("description", schema.get("description") + "; or the file of a table (.csv) beside this file");
        schema.put("pattern", "^unknown$|" + TABLE);
        return schema;
    }

    // values

    private Map<String, Object> value(Slot slot) {
        Field field = slot.field();
        return switch (slot.form()) {
            case GROUP -> described(field.says(), reference(slot.group()));
            case NAMES -> {
                Slot each = slot.named();
                yield each.form() == Form.GROUP ? names(field.says(), reference(each.group())) : names(field.says(), value(each));
            }
            case NAMES_OR_NONE -> {
                Map<String, Object> names = names(field.says(), reference(slot.named().group()));
                names.put("pattern", "^(none|unknown)$");
                yield names;
            }
            case LIST -> described(field.says(), map("type", List.of("array", "string", "null"), "pattern", "^(none|" + NOT_SHOWN + ")$",
                    "items", map("type", List.of("string", "number", "boolean"))));
            case QUANTITY -> quantity(field, slot.anyDimension());
            case SIZE -> text(field, SIZE, List.of("4 AWG", "25 mm2"));
            case COUNT -> described(field.says(), map("type", List.of("integer", "string", "null"), "minimum", 0, "maximum", 9999,
                    "pattern", "^(" + NOT_SHOWN + ")$"));
            case NUMBER -> described(field.says(), map("type", List.of("number", "string", "null"), "exclusiveMinimum", 0, "maximum", 100,
                    "pattern", "^(" + NOT_SHOWN + ")$"));
            case TRUTH -> described(field.says(), map("enum", Arrays.asList(true, false, "unknown", "cannot-be-seen", null)));
            case WORD -> word(field);
        };
    }

    private static Map<String, Object> word(Field field) {
        if (field.words().length == 0) {
            return described(field.says(), map("type", List.of("string", "number", "boolean", "null")));
        }
        List<Object> words = new ArrayList<>(List.of(field.words()));
        words.addAll(Arrays.asList("unknown", "cannot-be-seen", null));
        return described(field.says(), map("enum", new ArrayList<>(new LinkedHashSet<>(words))));
    }

    private static Map<String, Object> quantity(Field field, boolean anyDimension) {
        List<String> examples = new ArrayList<>();
        Matcher quoted = QUOTED.matcher((anyDimension ? Dimension.VOLTAGE : field.in()).examples());
        while (quoted.find()) {
            examples.add(quoted.group(1));
        }
        return text(field, QUANTITY, examples);
    }

    private static Map<String, Object> text(Field field, String pattern, List<String> examples) {
        return described(field.says() + ", such as " + String.join(" or ", examples), map("type", List.of("string", "null"),
                "pattern", pattern + "|^(" + NOT_SHOWN + ")$", "examples", examples));
    }

    // plain JSON

    private static Map<String, Object> described(String says, Map<String, Object> schema) {
        Map<String, Object> result = map("description", says);
        result.putAll(schema);
        return result;
    }

    private static Map<String, Object> map(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }

    private static Map<String, Object> inside(Map<String, Object> group) {
        return cast(group.get("properties"));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> cast(Object map) {
        return (Map<String, Object>) map;
    }
}
