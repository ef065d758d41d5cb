package bayproof.command;

/**
 * An option of a command.
 *
 * @param name  its name with the two hyphens
 * @param label what stands behind it, for the help page; null where nothing does
 * @param says  what it does, one or two sentences
 * @param many  whether it may stand several times
 * @param may   the one word that may stand behind it and need not; null where a word must stand there, or none may
 */
record Option(String name, String label, String says, boolean many, String may) {
    Option(String name, String label, String says) {
        this(name, label, says, false, null);
    }

    Option(String name, String label, String says, boolean many) {
        this(name, label, says, many, null);
    }

    /** An option behind which one word may stand. */
    static Option withOrWithout(String name, String may, String says) {
        return new Option(name, null, says, false, may);
    }

    boolean takesWord() {
        return label != null;
    }
}
