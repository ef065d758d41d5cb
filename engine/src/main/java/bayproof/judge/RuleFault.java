package bayproof.judge;

/** A mistake in a rule or in this program, never in a user's files. */
public final class RuleFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public RuleFault(String message) {
        super(message);
    }

    public RuleFault(String message, Throwable cause) {
        super(message, cause);
    }
}
