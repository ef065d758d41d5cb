package bayproof.read;

import bayproof.read.Tree.MapTree;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Finds what a bound group of keys does not say, at any depth, in the order of its record. */
final class Gaps {
    /**
     * A value that is missing.
     *
     * @param pattern the path with an asterisk in place of each name that the file itself chose
     */
    record Found(String path, String pattern, String ask, At at) {
    }

    private final List<Found> found = new ArrayList<>();

    private Gaps() {
    }

    /**
     * What is missing.
     *
     * @param bound   the record
     * @param tree    the group it was bound from; null where nothing is written
     * @param path    path of the group; empty for a whole file
     * @param pattern the same with asterisks
     * @param at      where what is missing would stand
     */
    static List<Found> of(Record bound, Tree tree, String path, String pattern, At at) {
        Gaps gaps = new Gaps();
        gaps.group(bound, tree, path, pattern, at);
        return List.copyOf(gaps.found);
    }

    private void group(Record bound, Tree tree, String path, String pattern, At at) {
        MapTree map = tree instanceof MapTree given ? given : null;
        for (RecordComponent component : bound.getClass().getRecordComponents()) {
            Field field = component.getAnnotation(Field.class);
            if (component.isAnnotationPresent(Inline.class)) {
                group((Record) value(component, bound), tree, path, pattern, at);
            } else if (field != null) {
                value(value(component, bound), field, map == null ? null : map.get(field.key()), below(path, field.key()), below(pattern, field.key()), at);
            }
        }
    }

    private void value(Object value, Field field, Tree tree, String path, String pattern, At at) {
        if (value instanceof Shown.Missing) {
            found.add(new Found(path, pattern, field.says(), tree == null ? at : tree.at()));
        } else if (value instanceof Map<?, ?> map) {
            if (tree == null) {
                found.add(new Found(path, pattern, field.says(), at));
            }
            map.forEach((id, one) -> value(one, field, tree instanceof MapTree given ? given.get((String) id) : null, path + "." + id, pattern + ".*", at));
        } else if (value instanceof Record group && !(value instanceof Shown)) {
            group(group, tree, path, pattern, tree == null ? at : tree.at());
        }
    }

    private static String below(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private static Object value(RecordComponent component, Record bound) {
        try {
            Method accessor = component.getAccessor();
            accessor.setAccessible(true);
            return accessor.invoke(bound);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }
}
