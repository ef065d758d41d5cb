package bayproof.report;

import java.util.Collection;

/** What can hurt somebody while doing the work. */
public final class Cautions {
    private static final String LABEL = "CAUTION  ";
    /** What comes before every caution. */
    public static final String FIRST_COMES = "The vehicle maker's procedure, local law and licensed practice come first.";

    private Cautions() {
    }

    /** Adds the cautions to a page, and what comes before all of them. */
    static void print(Paper page, Collection<String> cautions) {
        String label = LABEL;
        for (String caution : cautions) {
            page.hanging(label, caution);
            label = " ".repeat(LABEL.length());
        }
        page.hanging(label, FIRST_COMES);
    }
}
