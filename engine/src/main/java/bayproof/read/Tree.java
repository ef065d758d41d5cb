package bayproof.read;

import bayproof.vocabulary.At;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A file as it was written: maps, lists and texts, each with its position. Immutable. */
public sealed interface Tree {
    At at();

    /** A word for messages. */
    String noun();

    /** A text as it stands in the file; numbers and booleans keep their spelling. */
    record ScalarTree(String text, boolean quoted, At at) implements Tree {
        @Override
        public String noun() {
            return "a value";
        }

        /** Whether nothing was written: an empty value, {@code ~} or {@code null}. */
        public boolean isEmpty() {
            return !quoted && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }
    }

    /** A list in the order of the file. */
    record ListTree(List<Tree> items, At at) implements Tree {
        public ListTree {
            items = List.copyOf(items);
        }

        @Override
        public String noun() {
            return "a list";
        }
    }

    /** Key and value; the key has a position of its own. */
    record Entry(String key, At keyAt, Tree value) {
    }

    /** A map in the order of the file; keys are unique. */
    record MapTree(Map<String, Entry> entries, At at) implements Tree {
        public MapTree {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String noun() {
            return "a group of keys";
        }

        public Tree get(String key) {
            Entry entry = entries.get(key);
            return entry == null ? null : entry.value();
        }

        /** This map with the entries of another one put over it; the other one's win. */
        public MapTree overlaidBy(MapTree other) {
            Map<String, Entry> merged = new LinkedHashMap<>(entries);
            merged.putAll(other.entries);
            return new MapTree(merged, other.at);
        }

        public MapTree with(String key, Tree value) {
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            Entry before = entries.get(key);
            changed.put(key, new Entry(key, before == null ? value.at() : before.keyAt(), value));
            return new MapTree(changed, at);
        }

        public MapTree without(String key) {
            Map<String, Entry> changed = new LinkedHashMap<>(entries);
            changed.remove(key);
            return new MapTree(changed, at);
        }
    }
}
