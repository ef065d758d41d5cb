package bayproof.demand;

import java.util.Locale;

/** What a rule says of one subject. */
public enum Outcome {
    HOLDS,
    BROKEN,
    /** Plan or readings do not say. */
    UNSHOWN,
    /** The subject lies outside what the rule asks for. */
    NOT_APPLICABLE;

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
