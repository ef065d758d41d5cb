package bayproof.review;

import bayproof.read.Address;
import bayproof.read.SharedTables;
import java.util.List;
import java.util.Map;

/** What one look at a thing answers, with what it is taken, and what does instead of it: the tables looks and instead. */
public final class Looks {
    private static final String LOOKS = "looks.yaml";

    /** Read when the first question is asked. */
    private static final class Built {
        static final Looks TABLES = new Looks();
    }

    private final List<String> fitted = SharedTables.words(LOOKS, "fitted");
    private final List<String> holeOfVehicle = SharedTables.words(LOOKS, "hole-of-vehicle");
    private final Map<String, String> measured = SharedTables.texts(LOOKS, "measured");
    private final Map<String, String> tools = SharedTables.texts(LOOKS, "tools");
    private final Map<String, String> instead = SharedTables.texts("instead.yaml", "instead");

    private Looks() {
    }

    public static Looks built() {
        return Built.TABLES;
    }

    /** Whether a key of an item says how it is fitted here; otherwise its part's data sheet says it. */
    public boolean isFitted(String key) {
        return fitted.contains(key);
    }

    /** Whether a key of a hole belongs to the vehicle, and not to what the plan does to it. */
    public boolean isOfVehicle(String holeKey) {
        return holeOfVehicle.contains(holeKey);
    }

    /** The state of the vehicle in which a value is measured; null where it is not kept as a reading. */
    public String stateWhenMeasured(Address address) {
        return measured.get(address.pattern());
    }

    /** The instrument of a value that is measured. */
    public String toolFor(Address address) {
        String tool = tool(address);
        return tool == null ? "meter" : tool;
    }

    String tool(Address address) {
        String tool = tools.get(address.pattern());
        return tool != null ? tool : byLastKeys(tools, address.pattern());
    }

    /** All that does instead, by key. */
    public Map<String, String> all() {
        return instead;
    }

    String instead(OpenFact fact) {
        String text = fact.limit() == null ? null : instead.get(fact.limit());
        return text == null ? byLastKeys(instead, fact.need().path()) : text;
    }

    /** The text of the last key of a path; where there is none, of the one before it, because the last may be a chosen name. */
    private static String byLastKeys(Map<String, String> texts, String path) {
        int last = path.lastIndexOf('.');
        String text = texts.get(path.substring(last + 1));
        return text != null || last <= 0 ? text : texts.get(path.substring(path.lastIndexOf('.', last - 1) + 1, last));
    }
}
