package bayproof.read;

import bayproof.vocabulary.At;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Collects the mistakes of all files of a job, so that they can be named together. */
final class Problems {
    /** So many names are looked for among those known; a file with more mistakes is not the one that was meant. */
    private static final int MOST_SUGGESTIONS = 100;

    private final List<Problem> found = new ArrayList<>();
    private int suggestions;

    void add(At at, String what, String fix) {
        found.add(new Problem(at, what, fix));
    }

    void addAll(UnusableInput input) {
        found.addAll(input.problems());
    }

    /** A name that is none of those known; the nearest ones are suggested. */
    void unknown(At at, String noun, String word, Collection<String> known) {
        suggestions++;
        add(at, "\"" + shortened(word) + "\" is not " + noun + ".", suggestions > MOST_SUGGESTIONS ? "" : suggestion(word, known));
    }

    static String suggestion(String word, Collection<String> known) {
        LevenshteinDistance distance = new LevenshteinDistance(Math.max(2, word.length() / 2));
        List<String> near = known.stream().filter(one -> distance.apply(shortened(word), one) >= 0)
                .sorted(java.util.Comparator.<String, Integer>comparing(one -> distance.apply(shortened(word), one))
                        .thenComparing(one -> one)).limit(2).toList();
        if (!near.isEmpty()) {
            return "Did you mean " + String.join(" or ", near) + "?";
        }
        if (known.isEmpty()) {
            return "None is known here.";
        }
        List<String> some = known.stream().sorted().limit(8).toList();
        return "Known: " + String.join(", ", some) + (known.size() > some.size() ? ", ..." : "") + ".";
    }

    static String shortened(String word) {
        return word.length() > 60 ? word.substring(0, 60) + "..." : word;
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    void throwIfAny() throws UnusableInput {
        if (!found.isEmpty()) {
            throw new UnusableInput(found);
        }
    }
}
