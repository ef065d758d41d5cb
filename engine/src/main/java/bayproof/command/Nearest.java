package bayproof.command;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds what somebody may have meant. */
final class Nearest {
    private static final int MOST_CHARACTERS = 60;

    private Nearest() {
    }

    /** A sentence that names the nearest of the known words, or {@code otherwise} where none is near. */
    static String suggestion(String word, Collection<String> known, String otherwise) {
        String given = word.length() > MOST_CHARACTERS ? word.substring(0, MOST_CHARACTERS) : word;
        LevenshteinDistance distance = new LevenshteinDistance(Math.max(2, given.length() / 2));
        List<String> near = known.stream().filter(one -> distance.apply(given, one) >= 0 || one.startsWith(given))
                .sorted(Comparator.<String, Boolean>comparing(one -> !one.startsWith(given))
                        .thenComparing(one -> distance.apply(given, one)).thenComparing(one -> one)).limit(2).toList();
        return near.isEmpty() ? otherwise : "Did you mean " + String.join(" or ", near) + "?";
    }
}
