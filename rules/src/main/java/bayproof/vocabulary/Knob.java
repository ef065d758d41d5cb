package bayproof.vocabulary;

import java.util.List;
import java.util.function.Supplier;

/**
 * A planned value that could be changed to put a broken rule right, with the values worth trying.
 *
 * @param file   which file holds it: {@code plan} or {@code vehicle}
 * @param path   path of keys in that file, such as {@code runs.feed-1.length}; keys may hold dots, so it is a list
 * @param values lists the values to try; most knobs are never turned
 * @param along  paths in the same file that take the same value with it, such as what the terminals of a cable are made for
 */
public record Knob(String file, List<String> path, Supplier<List<String>> values, List<List<String>> along) {
    public Knob {
        path = List.copyOf(path);
        along = List.copyOf(along);
    }

    /** A value that stands alone. */
    public Knob(String file, List<String> path, Supplier<List<String>> values) {
        this(file, path, values, List.of());
    }

    /** Values to try, from the one nearest to the planned value outward, written as in the file; may be empty. */
    public List<String> ladder() {
        return values.get();
    }

    public String dotted() {
        return String.join(".", path);
    }
}
