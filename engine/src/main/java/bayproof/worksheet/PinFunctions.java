package bayproof.worksheet;

import bayproof.read.SharedTables;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.util.LinkedHashMap;
import java.util.Map;

/** What each function of a factory pin reads, from a table that is built into the tool. */
public final class PinFunctions {
    /**
     * One function.
     *
     * @param says    what it is
     * @param across  where the other tip of the meter goes
     * @param limits  name of the limit that its reading has to meet, by state of the vehicle
     * @param tone    whether a short tone tells whose wire it is
     * @param mustNot what it must not read, and what that would mean
     */
    public record Function(String name, String says, String across, Map<String, String> limits, boolean tone, String mustNot) {
    }

    /** Read when the first form is printed. */
    private static final class Built {
        static final Map<String, Function> FUNCTIONS = read();
    }

    private PinFunctions() {
    }

    /** Functions by name, in the order of the table. */
    public static Map<String, Function> built() {
        return Built.FUNCTIONS;
    }

    private static Map<String, Function> read() {
        Map<String, Function> functions = new LinkedHashMap<>();
        for (Entry entry : ((MapTree) SharedTables.file("pin-functions.yaml").get("functions")).entries().values()) {
            MapTree row = (MapTree) entry.value();
            Map<String, String> limits = new LinkedHashMap<>();
            ((MapTree) row.get("reads")).entries().forEach((state, limit) -> limits.put(state, text(limit.value())));
            functions.put(entry.key(), new Function(entry.key(), text(row.get("says")), text(row.get("across")),
                    limits, row.get("tone") != null, text(row.get("must-not"))));
        }
        return functions;
    }

    private static String text(Tree tree) {
        return ((ScalarTree) tree).text();
    }
}
