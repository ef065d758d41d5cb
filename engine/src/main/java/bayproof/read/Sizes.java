package bayproof.read;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cable sizes for people: American wire gauge and square millimeters side by side, whatever a shop thinks in. */
public final class Sizes {
    private static final Pattern SIZE = Pattern.compile("(?<![0-9./])(?:[0-9]{1,2}|[1-4]/0) AWG(?! \\(|\\))"
            + "|(?<![0-9.])[0-9]{1,3}(?:\\.[0-9]+)? mm2(?![0-9]| \\(|\\))");

    private Sizes() {
    }

    /** A text with the other system behind every size of the trade in it: {@code 4 AWG (21.2 mm2)}. */
    public static String bothWays(String text) {
        Matcher size = SIZE.matcher(text);
        return size.replaceAll(found -> Matcher.quoteReplacement(SharedTables.conductors().knows(found.group())
                ? found.group() + " (" + SharedTables.conductors().otherSystem(found.group()) + ")" : found.group()));
    }
}
