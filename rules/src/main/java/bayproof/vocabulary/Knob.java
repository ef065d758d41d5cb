package bayproof.vocabulary;

import java.util.List;

/**
 * A planned value that could be changed to put a broken rule right, with the values worth trying.
 *
 * @param file   which file holds it: {@code plan} or {@code vehicle}
 * @param path   path of keys in that file, such as {@code runs.feed-1.length}; keys may hold dots, so it is a list
 * @param ladder values to try, from the one nearest to the planned value outward, written as in the file
 */
public record Knob(String file, List<String> path, List<String> ladder) {
    public Knob {
        path = List.copyOf(path);
        ladder = List.copyOf(ladder);
    }

    public String dotted() {
        return String.join(".", path);
    }
}
