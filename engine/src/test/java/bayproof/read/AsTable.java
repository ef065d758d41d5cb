package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes entries as the table that a person would type, and reads trees without their positions. */
final class AsTable {
    private AsTable() {
    }

    /** The rows of a table, the header first. */
    static List<List<String>> rows(MapTree entries) {
        Set<String> header = new LinkedHashSet<>(List.of("id"));
        List<Map<String, String>> rows = new ArrayList<>();
        for (Entry entry : entries.entries().values()) {
            Map<String, String> row = new LinkedHashMap<>(Map.of("id", entry.key()));
            leaves(entry.value(), "", row);
            header.addAll(row.keySet());
            rows.add(row);
        }
        List<List<String>> table = new ArrayList<>(List.of(List.copyOf(header)));
        rows.forEach(row -> table.add(header.stream().map(name -> row.getOrDefault(name, "")).toList()));
        return table;
    }

    private static void leaves(Tree tree, String path, Map<String, String> row) {
        if (tree instanceof MapTree map && !map.entries().isEmpty()) {
            map.entries().values().forEach(entry -> leaves(entry.value(), path.isEmpty() ? entry.key() : path + "." + entry.key(), row));
        } else if (tree instanceof ListTree list && !list.items().isEmpty()) {
            row.put(path, String.join(" ", list.items().stream().map(item -> ((ScalarTree) item).text()).toList()));
        } else {
            row.put(path, tree instanceof ScalarTree scalar ? scalar.text() : "none");
        }
    }

    /** A tree as plain maps, lists and texts; {@code none} stands for an empty list. */
    static Object plain(Tree tree) {
        if (tree instanceof MapTree map) {
            Map<String, Object> result = new LinkedHashMap<>();
            map.entries().values().forEach(entry -> result.put(entry.key(), plain(entry.value())));
            return result;
        }
        if (tree instanceof ListTree list) {
            return list.items().isEmpty() ? "none" : list.items().stream().map(AsTable::plain).toList();
        }
        return ((ScalarTree) tree).text();
    }
}
