package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.units.Dimension;
import bayproof.units.Quantity;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Turns a tree into immutable records by the {@link Field}s of their components. Everything wrong is noted as a
 * problem with its position; everything absent becomes a missing value with the path where it would stand.
 *
 * <p>Components named {@code at}, {@code path} and {@code id} take the position, path and last key of the group.
 */
final class Binder {
    static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    static final Pattern DOTTED_ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*\\.[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern COUNT = Pattern.compile("[0-9]{1,4}");
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,6})?");
    private static final BigDecimal LARGEST_NUMBER = BigDecimal.valueOf(100);
    /** What YAML 1.1 readers take for booleans; refused so that two readers cannot disagree. */
    private static final TreeSet<String> OTHER_BOOLEANS = new TreeSet<>(List.of("yes", "no", "y", "n", "off", "on"));
    private static final double LOWEST_CELSIUS = -60;
    /** No meter and no ear goes further, up or down. */
    private static final double LARGEST_LEVEL = 200;
    /** In any SI unit: far above every figure of this trade, far below where arithmetic suffers. */
    private static final double LARGEST = 1e6;
    /** A vehicle stands for months, and a large battery holds more than a million coulombs. */
    private static final double LARGEST_IN_TIME = 1e8;
    private static final Map<Class<?>, Shape> SHAPES = new ConcurrentHashMap<>();

    /** What is needed again and again of a record class. */
    private record Shape(RecordComponent[] components, Field[] fields, Constructor<?> constructor, List<String> keys, Set<String> known) {
        static Shape of(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            Field[] fields = new Field[components.length];
            Class<?>[] types = new Class<?>[components.length];
            List<String> keys = new ArrayList<>();
            for (int i = 0; i < components.length; i++) {
                fields[i] = components[i].getAnnotation(Field.class);
                types[i] = components[i].getType();
                if (fields[i] != null) {
                    keys.add(fields[i].key());
                } else if (components[i].isAnnotationPresent(Inline.class)) {
                    keys.addAll(of(types[i]).keys());
                }
            }
            try {
                Constructor<?> constructor = type.getDeclaredConstructor(types);
                constructor.setAccessible(true);
                return new Shape(components, fields, constructor, keys, Set.copyOf(keys));
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private final Problems problems;
    private final Readings readings;
    /** Values that a decimal comma cut in two: told once. */
    private final Set<At> cutByComma = new HashSet<>();

    Binder(Problems problems, Readings readings) {
        this.problems = problems;
        this.readings = readings;
    }

    /** Keys that a record reads. */
    static List<String> keysOf(Class<?> type) {
        return SHAPES.computeIfAbsent(type, Shape::of).keys();
    }

    /**
     * Binds a group of keys.
     *
     * @param type  record class
     * @param tree  the group, or null when nothing is written
     * @param path  path of the group; empty for a whole file
     * @param at    position that stands for the group when nothing is written
     * @param extra keys that are read elsewhere and are no mistake
     */
    <R> R group(Class<R> type, Tree tree, String path, At at, String... extra) {
        return named(type, tree, path, last(path), at, extra);
    }

    /** The same where the last key of the path may hold a dot. */
    <R> R named(Class<R> type, Tree tree, String path, String id, At at, String... extra) {
        Shape shape = SHAPES.computeIfAbsent(type, Shape::of);
        MapTree map = null;
        At here = at;
        if (tree instanceof MapTree given) {
            map = given;
            here = given.at();
            refuseUnknownKeys(map, shape, extra);
        } else if (tree != null && !isUnknown(tree) && !isBareWord(type, tree)) {
            problems.add(tree.at(), "\"" + id + "\" must be a group of keys, not " + tree.noun() + ".",
                    "Keys it takes: " + String.join(", ", shape.keys()) + ".");
        }
        return bound(type, shape, map, path, id, at, here);
    }

    private <R> R bound(Class<R> type, Shape shape, MapTree map, String path, String id, At at, At here) {
        Object[] values = new Object[shape.components().length];
        for (int i = 0; i < values.length; i++) {
            RecordComponent component = shape.components()[i];
            Field field = shape.fields()[i];
            if (component.isAnnotationPresent(Inline.class)) {
                Class<?> inner = component.getType();
                values[i] = bound(inner, SHAPES.computeIfAbsent(inner, Shape::of), map, path, id, at, here);
            } else if (field == null) {
                values[i] = switch (component.getName()) {
                    case "at" -> at;
                    case "path" -> path;
                    case "id" -> id;
                    default -> throw new IllegalStateException(type + " has a component without a field: " + component);
                };
            } else {
                String child = path.isEmpty() ? field.key() : path + "." + field.key();
                values[i] = value(component.getGenericType(), field, map == null ? null : map.get(field.key()), child, here);
            }
        }
        try {
            return type.cast(shape.constructor().newInstance(values));
        } catch (InstantiationException | IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot make a " + type.getSimpleName(), e);
        }
    }

    private void refuseUnknownKeys(MapTree map, Shape shape, String... extra) {
        List<String> more = List.of(extra);
        Entry before = null;
        for (Entry entry : map.entries().values()) {
            if (!shape.known().contains(entry.key()) && !more.contains(entry.key())) {
                if (isCutByComma(before, entry)) {
                    String whole = ((ScalarTree) before.value()).text() + "," + entry.key();
                    cutByComma.add(before.value().at());
                    problems.add(before.value().at(), "\"" + whole + "\" has a comma, which ends a value here.",
                            "Write a decimal point: \"" + whole.replace(',', '.') + "\".");
                } else {
                    List<String> known = new ArrayList<>(shape.keys());
                    known.addAll(more);
                    problems.unknown(entry.keyAt(), "a key that is known here", entry.key(), known);
                }
            }
            before = entry;
        }
    }

    /** Whether a decimal comma cut a value in two: YAML takes what follows it for a key of its own. */
    private static boolean isCutByComma(Entry before, Entry entry) {
        return before != null && before.value() instanceof ScalarTree number && number.text().matches("[+-]?[0-9]+")
                && entry.key().matches("[0-9]+\\s*[^0-9\\s].*") && entry.value() instanceof ScalarTree nothing && nothing.isEmpty();
    }

    /** Somebody's word without a name or a day behind it is legal and shows nothing. */
    private static boolean isBareWord(Class<?> type, Tree tree) {
        return type == Vouched.class && tree instanceof ScalarTree scalar && (scalar.text().equals("true") || scalar.text().equals("false"));
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private static boolean isUnknown(Tree tree) {
        return tree instanceof ScalarTree scalar && (scalar.isEmpty() || scalar.text().equals("unknown"));
    }

    private Object value(Type type, Field field, Tree tree, String path, At at) {
        if (type instanceof ParameterizedType generic) {
            Type inner = generic.getActualTypeArguments()[generic.getActualTypeArguments().length - 1];
            if (generic.getRawType() == Map.class) {
                return map(inner, field, tree, path, at);
            }
            return inner instanceof ParameterizedType names && names.getRawType() == Map.class
                    ? namesOrNone(names.getActualTypeArguments()[1], field, tree, path, at) : shown(inner, field, tree, path, at);
        }
        return group((Class<?>) type, tree, path, at);
    }

    /** A map where nothing at all is said by {@code none}; an empty one says nothing. */
    private Shown<Map<String, Object>> namesOrNone(Type inner, Field field, Tree tree, String path, At at) {
        if (tree instanceof ScalarTree scalar && scalar.text().equals("none")) {
            return Shown.at(Map.of(), tree.at());
        }
        Map<String, Object> names = map(inner, field, tree, path, at);
        return names.isEmpty() ? Shown.missing(new Need(path, field.says(), tree == null ? at : tree.at())) : Shown.at(names, tree.at());
    }

    /** A map of ids to groups or to values; an absent or unknown one is empty. */
    private Map<String, Object> map(Type inner, Field field, Tree tree, String path, At at) {
        Map<String, Object> result = new LinkedHashMap<>();
        if (tree == null || isUnknown(tree)) {
            return result;
        }
        if (!(tree instanceof MapTree map)) {
            problems.add(tree.at(), "\"" + field.key() + "\" must be a group of names, not " + tree.noun() + ".", "");
            return result;
        }
        for (Entry entry : map.entries().values()) {
            if (!ID.matcher(entry.key()).matches() && !DOTTED_ID.matcher(entry.key()).matches()) {
                problems.add(entry.keyAt(), "\"" + entry.key() + "\" is not a name.",
                        "Use lower-case letters, digits and hyphens, such as amp-front; a terminal or channel adds a dot and its own name.");
            }
            String child = path + "." + entry.key();
            result.put(entry.key(), inner instanceof ParameterizedType shown
                    ? shown(shown.getActualTypeArguments()[0], field, entry.value(), child, entry.keyAt())
                    : named((Class<?>) inner, entry.value(), child, entry.key(), entry.keyAt()));
        }
        return Collections.unmodifiableMap(result);
    }

    private Shown<?> shown(Type type, Field field, Tree tree, String path, At at) {
        Need need = new Need(path, field.says(), tree == null ? at : tree.at());
        if (type == Double.class) {
            Shown<Double> measured = reading(field, path);
            if (measured != null) {
                readings.replaced(path, tree instanceof ScalarTree written ? written.text() : "");
                if (tree instanceof ScalarTree scalar && !isUnknown(tree) && !scalar.text().equals("cannot-be-seen")) {
                    quantity(scalar, field);
                }
                return measured;
            }
        }
        if (tree == null || isUnknown(tree)) {
            return Shown.missing(need);
        }
        if (tree instanceof ScalarTree scalar && scalar.text().equals("cannot-be-seen")) {
            return new Shown.Hidden<>(need);
        }
        Object value;
        if (type instanceof ParameterizedType) {
            value = words(tree, field);
        } else if (tree instanceof ScalarTree scalar) {
            value = scalar(type, field, scalar);
        } else {
            problems.add(tree.at(), "\"" + field.key() + "\" must be one value, not " + tree.noun() + ".", "");
            value = null;
        }
        return value == null ? Shown.missing(need) : Shown.at(value, tree.at());
    }

    private Shown<Double> reading(Field field, String path) {
        Readings.Reading reading = readings.replacing(path);
        if (reading == null || !reading.value().isGiven()) {
            return null;
        }
        Quantity quantity = reading.value().orElse(null);
        if (quantity.si() < 0 && field.in() != Dimension.TEMPERATURE || quantity.si() > LARGEST || quantity.si() == 0 && !field.zero()) {
            problems.add(reading.value().atOr(reading.at()), "this reading of " + path + " cannot be right.",
                    "It must be more than zero and not absurdly large.");
            return null;
        }
        if (quantity.dimension() != field.in()) {
            problems.add(reading.at(), "a reading of " + path + " is given in " + quantity.dimension().symbol() + ".",
                    "Give it in " + field.in().symbol() + ".");
            return null;
        }
        return reading.counts() ? Shown.at(quantity.si(), reading.at()) : null;
    }

    private Object scalar(Type type, Field field, ScalarTree scalar) {
        if (type == Double.class) {
            return quantity(scalar, field);
        }
        if (type == Quantity.class) {
            return anyQuantity(scalar);
        }
        if (type == Integer.class) {
            if (!scalar.quoted() && COUNT.matcher(scalar.text()).matches() && !scalar.text().matches("0[0-9]+")) {
                return Integer.valueOf(scalar.text());
            }
            problems.add(scalar.at(), "\"" + scalar.text() + "\" is not a whole number.", "Write it as digits, such as 4.");
            return null;
        }
        if (type == BigDecimal.class) {
            BigDecimal number = !scalar.quoted() && NUMBER.matcher(scalar.text()).matches() ? new BigDecimal(scalar.text()) : BigDecimal.ZERO;
            if (number.signum() > 0 && number.compareTo(LARGEST_NUMBER) <= 0) {
                return number;
            }
            problems.add(scalar.at(), "\"" + scalar.text() + "\" is not a plain number above 0 and up to 100.", "Write it without a unit, such as 0.45.");
            return null;
        }
        if (type == Boolean.class) {
            if (scalar.text().equals("true") || scalar.text().equals("false")) {
                return Boolean.valueOf(scalar.text());
            }
            problems.add(scalar.at(), "\"" + scalar.text() + "\" is neither true nor false.", "Write true or false.");
            return null;
        }
        return word(field, scalar);
    }

    private String word(Field field, ScalarTree scalar) {
        if (field.size()) {
            try {
                String size = Units.parseSize(scalar.text());
                if (SharedTables.conductors().knows(size)) {
                    return size;
                }
                problems.add(scalar.at(), "there is no data for the cable size \"" + size + "\".",
                        "Use a size that is made, such as 8 AWG or 10 mm2.");
                return null;
            } catch (UnitException e) {
                problems.add(scalar.at(), e.what(), e.fix());
                return null;
            }
        }
        if (field.words().length > 0 && !List.of(field.words()).contains(scalar.text())) {
            boolean looksBoolean = OTHER_BOOLEANS.contains(scalar.text().toLowerCase(Locale.ROOT));
            problems.add(scalar.at(), "\"" + scalar.text() + "\" is not an answer to \"" + field.key() + "\".",
                    looksBoolean ? "Use one of: " + String.join(", ", field.words()) + "."
                            : Problems.suggestion(scalar.text(), List.of(field.words())));
            return null;
        }
        return scalar.text();
    }

    private Double quantity(ScalarTree scalar, Field field) {
        if (cutByComma.contains(scalar.at())) {
            return null;
        }
        try {
            double si = Units.parse(scalar.text(), field.in()).si();
            return isPlausible(si, scalar, field) ? si : null;
        } catch (UnitException e) {
            problems.add(scalar.at(), "\"" + scalar.text() + "\" cannot be read as \"" + field.key() + "\".", e.getMessage());
            return null;
        }
    }

    /** Nothing but a temperature or a level is below zero here, and only what is marked so may be zero. */
    private boolean isPlausible(double si, ScalarTree scalar, Field field) {
        boolean tooLow = field.in() == Dimension.TEMPERATURE ? si < LOWEST_CELSIUS
                : field.in() == Dimension.LEVEL ? Math.abs(si) > LARGEST_LEVEL : si < 0 || si == 0 && !field.zero();
        double largest = field.in() == Dimension.TIME || field.in() == Dimension.CHARGE ? LARGEST_IN_TIME : LARGEST;
        if (tooLow || si > largest) {
            problems.add(scalar.at(), "\"" + scalar.text() + "\" cannot be right for \"" + field.key() + "\".",
                    field.in() == Dimension.LEVEL ? "Levels lie between -200 dB and 200 dB."
                    : tooLow ? "It must be " + (field.zero() ? "zero or more." : "more than zero.") : "Nothing in a vehicle is that large.");
            return false;
        }
        return true;
    }

    private Quantity anyQuantity(ScalarTree scalar) {
        try {
            return Units.parse(scalar.text());
        } catch (UnitException e) {
            problems.add(scalar.at(), "\"" + scalar.text() + "\" is not a quantity.", e.getMessage());
            return null;
        }
    }

    /** A list of plain words; {@code none} is an empty one. */
    private List<String> words(Tree tree, Field field) {
        if (tree instanceof ScalarTree scalar && scalar.text().equals("none")) {
            return List.of();
        }
        if (!(tree instanceof ListTree list)) {
            problems.add(tree.at(), "\"" + field.key() + "\" must be a list, not " + tree.noun() + ".",
                    "Write it in brackets, such as [ one, two ]; nothing at all is [].");
            return null;
        }
        List<String> result = new ArrayList<>();
        for (Tree item : list.items()) {
            if (item instanceof ScalarTree scalar && !scalar.isEmpty()) {
                result.add(scalar.text());
            } else {
                problems.add(item.at(), "a list of plain words holds " + item.noun() + " here.", "Write one word.");
            }
        }
        return List.copyOf(result);
    }
}
