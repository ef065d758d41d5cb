package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.util.LinkedHashMap;
import java.util.Map;

/** Puts a merge patch over a file, after RFC 7396: a null removes, a map goes deeper, anything else replaces. */
public final class MergePatch {
    private MergePatch() {
    }

    public static MapTree apply(MapTree target, MapTree patch) {
        Map<String, Entry> result = new LinkedHashMap<>(target.entries());
        for (Entry change : patch.entries().values()) {
            Entry before = result.get(change.key());
            if (change.value() instanceof ScalarTree scalar && scalar.isEmpty()) {
                result.remove(change.key());
            } else if (change.value() instanceof MapTree deeper) {
                MapTree inner = before != null && before.value() instanceof MapTree map
                        ? map : new MapTree(Map.of(), change.value().at());
                result.put(change.key(), new Entry(change.key(), before == null ? change.keyAt() : before.keyAt(),
                        apply(inner, deeper)));
            } else {
                result.put(change.key(), new Entry(change.key(), before == null ? change.keyAt() : before.keyAt(), change.value()));
            }
        }
        return new MapTree(result, target.at());
    }
}
