package bayproof.command;

/**
 * An option of a command.
 *
 * @param name  its name with the two hyphens
 * @param label what stands behind it, for the help page; null where nothing does
 * @param says  what it does, one or two sentences
 * @param many  whether it may stand several times
 */
record Option(String name, String label, String says, boolean many) {
    /** For every command that prints quantities; {@link Main} opens the scope. */
    static final Option UNITS = new Option("--units", "SYSTEM", "Print lengths, volumes, masses, torques and temperatures in "
            + "metric (where none is named) or us units. Cable sizes show AWG and mm2 either way. JSON is always metric.");

    Option(String name, String label, String says) {
        this(name, label, says, false);
    }

    boolean takesWord() {
        return label != null;
    }
}
