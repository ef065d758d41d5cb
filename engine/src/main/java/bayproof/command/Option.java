package bayproof.command;

import java.util.Locale;

/**
 * An option of a command.
 *
 * @param name  its name with the two hyphens
 * @param label what stands behind it, for the help page; null where nothing does
 * @param says  what it does, one or two sentences
 * @param use   how it may stand
 */
record Option(String name, String label, String says, Use use) {

    /** How an option may stand. */
    enum Use {
        /** Once, with its word if it takes one. */
        ONCE,
        /** Several times. */
        MANY,
        /** Once, with or without its word. */
        BARE
    }

    /** For every command that prints quantities; {@link Main} opens the scope. */
    static final Option UNITS = new Option("--units", "SYSTEM", "Print lengths, volumes, masses, torques and temperatures in "
            + "metric (where none is named) or us units. Cable sizes show AWG and mm2 either way. JSON is always metric.");

    /** For every command that judges waivers. */
    static final Option TODAY = new Option("--today", "DAY", "Take this day, year-month-day, for today, so that waivers are judged the same again.");

    Option(String name, String label, String says) {
        this(name, label, says, Use.ONCE);
    }

    boolean takesWord() {
        return label != null;
    }

    boolean many() {
        return use == Use.MANY;
    }

    boolean wordNeeded() {
        return takesWord() && use != Use.BARE;
    }

    /** Whether a word may stand behind it; a label in small letters is the only word that may. */
    boolean fits(String given) {
        return !label.equals(label.toLowerCase(Locale.ROOT)) || given.equals(label);
    }
}
