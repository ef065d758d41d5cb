package bayproof.command;

/**
 * An option of a command.
 *
 * @param name  its name with the two hyphens
 * @param label what stands behind it, for the help page; null where nothing does
 * @param says  what it does, one or two sentences
 */
record Option(String name, String label, String says) {
    boolean takesWord() {
        return label != null;
    }
}
