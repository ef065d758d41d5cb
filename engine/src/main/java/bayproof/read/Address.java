package bayproof.read;

import bayproof.read.Layout.Form;
import bayproof.read.Layout.Slot;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Where a value that a path names stands in the files of a job, and what may be written there.
 *
 * @param kind    kind of file that holds it: plan or vehicle; parts for an entry of a parts book; waivers
 * @param keys    keys that lead to it, each of them one key of the file
 * @param pattern the same joined by dots, with an asterisk in place of each name that the file chose
 * @param says    what it is
 * @param unit    units it may be written in, such as "m or in"; empty where it has none
 * @param words   words it must be one of; empty where any will do
 * @param many    whether several words may be written
 * @param group   whether keys stand there, not one value
 */
public record Address(String kind, List<String> keys, String pattern, String says, String unit, List<String> words, boolean many,
                      boolean group) {
    /** Groups whose names hold a dot of their own. */
    private static final Set<String> DOTTED = Set.of("pins", "speaker-wiring", "settings");
    private static final Set<String> ITEM_GROUPS = Set.of("items", "supply.sources", "parts");
    private static final Set<Form> NAMED = Set.of(Form.NAMES, Form.NAMES_OR_NONE);
    private static final String HOLES = "pass-throughs";

    public Address {
        keys = List.copyOf(keys);
        words = List.copyOf(words);
    }

    /** The address of a path; null where no file of a job holds such a value. */
    public static Address of(JobFiles files, String path) {
        List<String> keys = keys(path);
        String group = path.startsWith("supply.sources") ? "supply.sources" : keys.get(0);
        int depth = group.equals("supply.sources") ? 2 : 1;
        if (ITEM_GROUPS.contains(group)) {
            return ofItem(files, group, depth, keys);
        }
        if (group.equals(HOLES)) {
            return keys.size() == 1 ? whole("vehicle", keys, "holes between two zones")
                    : found("vehicle", Vehicle.PassThrough.class, 2, keys, keys.subList(2, keys.size()));
        }
        if (group.equals(WaiversReader.KIND)) {
            return keys.size() == 1 ? null : found(WaiversReader.KIND, Waiver.class, 2, keys, keys.subList(2, keys.size()));
        }
        Address ofPlan = found("plan", Plan.class, 0, keys, keys);
        return ofPlan != null ? ofPlan : found("vehicle", Vehicle.class, 0, keys, keys);
    }

    private static List<String> keys(String path) {
        List<String> keys = new ArrayList<>(Arrays.asList(path.split("\\.")));
        if (keys.size() > 2 && DOTTED.contains(keys.get(0))) {
            keys.set(1, keys.get(1) + "." + keys.remove(2));
        }
        return keys;
    }

    private static Address ofItem(JobFiles files, String group, int depth, List<String> keys) {
        String kind = group.equals("items") ? "plan" : group.equals("parts") ? "parts" : "vehicle";
        if (keys.size() == depth) {
            return whole(kind, keys, "pieces of equipment");
        }
        Class<? extends Item> type = Item.KINDS.get(itemKind(files, kind, keys.subList(0, depth + 1)));
        return type == null || keys.size() == depth + 1 ? null : found(kind, type, depth + 1, keys, keys.subList(depth + 1, keys.size()));
    }

    private static String itemKind(JobFiles files, String kind, List<String> keys) {
        MapTree item = at(files.tree(kind), keys) instanceof MapTree map ? map : null;
        String own = text(item, "kind");
        String part = text(item, "part");
        return own != null || part == null ? own : text(at(files.tree("parts"), List.of("parts", part)), "kind");
    }

    private static String text(Tree tree, String key) {
        return tree instanceof MapTree map && map.get(key) instanceof ScalarTree scalar ? scalar.text() : null;
    }

    /** What stands behind a row of keys; null where nothing does. */
    public static Tree at(Tree tree, List<String> keys) {
        Tree here = tree;
        for (String key : keys) {
            here = here instanceof MapTree map ? map.get(key) : null;
        }
        return here;
    }

    private static Address whole(String kind, List<String> keys, String says) {
        return new Address(kind, keys, String.join(".", keys), says, "", List.of(), false, true);
    }

    /**
     * @param named how many of the first keys lead to the record; the last of them is a name the file chose
     */
    private static Address found(String kind, Class<?> type, int named, List<String> keys, List<String> below) {
        if (below.isEmpty()) {
            return null;
        }
        List<String> pattern = new ArrayList<>(keys.subList(0, named));
        if (named > 0) {
            pattern.set(named - 1, "*");
        }
        Slot slot = null;
        for (String key : below) {
            boolean names = slot != null && NAMED.contains(slot.form());
            pattern.add(names ? "*" : key);
            slot = slot == null ? Layout.of(type).get(key) : names ? slot.named()
                    : slot.form() == Form.GROUP ? Layout.of(slot.group()).get(key) : null;
            if (slot == null) {
                return null;
            }
        }
        Form form = slot.form();
        return new Address(kind, keys, String.join(".", pattern), slot.field().says(), unit(slot), List.of(slot.field().words()),
                form == Form.LIST, form == Form.GROUP || NAMED.contains(form));
    }

    private static String unit(Slot slot) {
        return switch (slot.form()) {
            case QUANTITY -> slot.anyDimension() ? "with its unit" : units(slot.field().in());
            case SIZE -> "AWG or mm2";
            case COUNT -> "a whole number";
            case NUMBER -> "a plain number";
            default -> "";
        };
    }

    /** The units of the dimension's own examples: of {@code "18 in" or "0.45 m"} they are in and m. */
    private static String units(Dimension dimension) {
        if (dimension == Dimension.LENGTH) {
            return "m, mm or in";
        }
        List<String> units = new ArrayList<>();
        for (String example : dimension.examples().split("\"")) {
            if (example.matches("-?[0-9.]+ .*")) {
                units.add(example.substring(example.indexOf(' ') + 1));
            }
        }
        return String.join(" or ", units);
    }
}
