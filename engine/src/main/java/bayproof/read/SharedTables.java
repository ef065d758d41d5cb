package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.solve.AmpacityTable;
import bayproof.solve.ConductorTable;
import bayproof.solve.Conductors;
import bayproof.solve.FuseLadder;
import bayproof.units.Dimension;
import bayproof.units.UnitException;
import bayproof.units.Units;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads the reference tables that are built into the tool. A mistake in one is the tool's own fault, so it is thrown as
 * an {@link IllegalStateException} with its position.
 */
public final class SharedTables {
    private static final String FOLDER = "/bayproof/shared/";
    private static final double SQUARE_METRES_PER_MM2 = 1e-6;

    private SharedTables() {
    }

    /** Read once; they never change. */
    private static final class Known {
        static final Conductors CONDUCTORS = conductors(file("conductors.yaml"));
        static final FuseLadder FUSES = fuses(file("fuses.yaml"));
    }

    /** A file of the reference tables as it was written; its name may hold a folder. */
    public static String written(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** The conductors of {@code conductors.yaml}. */
    public static Conductors conductors() {
        return Known.CONDUCTORS;
    }

    static Conductors conductors(MapTree file) {
        MapTree copper = map(file, "copper");
        MapTree awg = map(file, "awg");
        MapTree ampacity = map(file, "ampacity");
        MapTree engineSpace = map(file, "engine-space");
        Map<String, List<Double>> rows = new LinkedHashMap<>();
        for (Entry row : map(ampacity, "rows").entries().values()) {
            rows.put(size(row.key(), row.value()), numbers(row.value(), Dimension.CURRENT));
        }
        AmpacityTable ampacityTable = new AmpacityTable(number(ampacity, "ambient", Dimension.TEMPERATURE),
                numbers(value(ampacity, "insulation"), Dimension.TEMPERATURE), rows,
                number(engineSpace, "ambient", Dimension.TEMPERATURE), numbers(value(engineSpace, "factors"), Dimension.RATIO));
        Map<String, Double> metric = new LinkedHashMap<>();
        for (Entry entry : map(map(file, "metric"), "meter-at-20").entries().values()) {
            metric.put(size(entry.key(), entry.value()), number(entry.value(), Dimension.RESISTANCE));
        }
        Map<String, Double> conductivity = new LinkedHashMap<>();
        for (Entry entry : map(map(file, "metals"), "conductivity").entries().values()) {
            conductivity.put(entry.key(), number(entry.value(), Dimension.RATIO));
        }
        List<String> ladder = new ArrayList<>();
        for (Tree item : items(value(awg, "ladder"))) {
            ladder.add(size(text(item), item));
        }
        return new Conductors(new ConductorTable(
                number(copper, "one-meter-of-one-mm2", Dimension.RESISTANCE) * SQUARE_METRES_PER_MM2,
                number(copper, "zero-resistance", Dimension.TEMPERATURE), number(awg, "lay-factor", Dimension.RATIO),
                ladder, metric, conductivity, ampacityTable));
    }

    /** The fuse ratings of {@code fuses.yaml}, all shapes together. */
    public static FuseLadder fuses() {
        return Known.FUSES;
    }

    static FuseLadder fuses(MapTree file) {
        List<Double> ratings = new ArrayList<>();
        for (Entry family : map(file, "families").entries().values()) {
            ratings.addAll(numbers(value(map(family.value()), "ratings"), Dimension.CURRENT));
        }
        return new FuseLadder(ratings);
    }

    /** The texts of a group of a table, by their keys. */
    public static Map<String, String> texts(String file, String group) {
        Map<String, String> texts = new TreeMap<>();
        map(file(file), group).entries().values().forEach(entry -> texts.put(entry.key(), text(entry.value())));
        return texts;
    }

    /** The words of a list of a table. */
    public static List<String> words(String file, String list) {
        return items(value(file(file), list)).stream().map(SharedTables::text).toList();
    }

    /** A table that is built into the tool, such as {@code fuses.yaml}. */
    public static MapTree file(String name) {
        try {
            return TreeReader.read(bytes(name), name);
        } catch (UnusableInput e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    private static byte[] bytes(String name) {
        try (InputStream in = SharedTables.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the table " + name + " is not built in");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Tree value(MapTree map, String key) {
        Tree value = map.get(key);
        if (value == null) {
            throw new IllegalStateException(map.at() + ": the key " + key + " is missing");
        }
        return value;
    }

    private static MapTree map(MapTree map, String key) {
        return map(value(map, key));
    }

    private static MapTree map(Tree tree) {
        if (tree instanceof MapTree map) {
            return map;
        }
        throw new IllegalStateException(tree.at() + ": a group of keys is needed here");
    }

    private static List<Tree> items(Tree tree) {
        if (tree instanceof ListTree list) {
            return list.items();
        }
        throw new IllegalStateException(tree.at() + ": a list is needed here");
    }

    private static String text(Tree tree) {
        if (tree instanceof ScalarTree scalar) {
            return scalar.text();
        }
        throw new IllegalStateException(tree.at() + ": a single value is needed here");
    }

    private static double number(MapTree map, String key, Dimension dimension) {
        return number(value(map, key), dimension);
    }

    private static double number(Tree tree, Dimension dimension) {
        try {
            return Units.parse(text(tree), dimension).si();
        } catch (UnitException e) {
            throw new IllegalStateException(tree.at() + ": " + e.getMessage(), e);
        }
    }

    private static List<Double> numbers(Tree tree, Dimension dimension) {
        List<Double> numbers = new ArrayList<>();
        for (Tree item : items(tree)) {
            numbers.add(number(item, dimension));
        }
        return numbers;
    }

    private static String size(String name, Tree where) {
        try {
            return Units.parseSize(name);
        } catch (UnitException e) {
            throw new IllegalStateException(where.at() + ": " + e.getMessage(), e);
        }
    }
}
