package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.units.Dimension;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The inspections of {@code inspections.yaml}: what is looked at, on which things of a job. */
public final class InspectionList {
    /**
     * One inspection.
     *
     * @param id        its name, that of the rule it answers
     * @param of        word for the things it looks at
     * @param look      what to look for, as a clause that is true when all is well
     * @param afterWork whether it looks at work of this job and cannot have been done before the plan was made
     * @param second    whether somebody else than who prepared the plan must look
     * @param measure   what is measured besides; null for a look of eyes and hands alone
     */
    public record Point(String id, String of, String look, boolean afterWork, boolean second, Measure measure) {
        /** Dimension of what is measured; null for a look of eyes and hands alone. */
        public Dimension measures() {
            return measure == null ? null : measure.dimension();
        }
    }

    /**
     * What a look measures.
     *
     * @param worst  the one value that counts, such as the least distance of all, as a noun with its article
     * @param suchAs a value as somebody may write it
     */
    public record Measure(Dimension dimension, String worst, String suchAs) {
    }

    private InspectionList() {
    }

    private static final class Known {
        static final Map<String, Point> POINTS = read();
        static final Map<String, String> THINGS = things();
    }

    /** Every inspection by its name, in the order of the table. */
    public static Map<String, Point> points() {
        return Known.POINTS;
    }

    /**
     * What the things that an inspection looks at are called on a list.
     *
     * @param of the word of the table
     */
    public static String called(String of) {
        return Known.THINGS.get(of);
    }

    private static Map<String, String> things() {
        Map<String, String> things = new LinkedHashMap<>();
        MapTree table = (MapTree) SharedTables.file("inspections.yaml").get("things");
        table.entries().values().forEach(entry -> things.put(entry.key(), ((ScalarTree) entry.value()).text()));
        return things;
    }

    private static Map<String, Point> read() {
        Map<String, Point> points = new LinkedHashMap<>();
        for (Entry entry : ((MapTree) SharedTables.file("inspections.yaml").get("inspections")).entries().values()) {
            MapTree point = (MapTree) entry.value();
            points.put(entry.key(), new Point(entry.key(), text(point, "of"), text(point, "look"), !text(point, "stage").equals("before-work"),
                    point.get("by") != null, measure(point)));
        }
        return Collections.unmodifiableMap(points);
    }

    private static Measure measure(MapTree point) {
        return point.get("worst") == null ? null
                : new Measure(Dimension.valueOf(text(point, "measures").toUpperCase(Locale.ROOT)), text(point, "worst"), text(point, "such-as"));
    }

    private static String text(MapTree point, String key) {
        return ((ScalarTree) point.get(key)).text();
    }
}
