package bayproof.command;

/** The command cannot be done as it was written. The message says what is wrong, the fix what to write instead. */
final class WrongUse extends Exception {
    private static final long serialVersionUID = 1L;
    private final String fix;

    WrongUse(String message, String fix) {
        super(message);
        this.fix = fix;
    }

    String fix() {
        return fix;
    }
}
