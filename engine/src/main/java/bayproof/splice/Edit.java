package bayproof.splice;

import java.util.Comparator;
import java.util.List;

/**
 * One change of a text.
 *
 * @param from   where it begins
 * @param to     where what it takes out ends; the same where it takes out nothing
 * @param insert what it puts in
 */
record Edit(int from, int to, String insert) {
    /** The text with some edits made; none of them overlaps another. */
    static String made(String text, List<Edit> edits) {
        StringBuilder made = new StringBuilder(text);
        edits.stream().sorted(Comparator.comparingInt(Edit::from).reversed()).forEach(edit -> made.replace(edit.from(), edit.to(), edit.insert()));
        return made.toString();
    }
}
