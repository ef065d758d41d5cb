package bayproof.splice;

/** A value cannot be put into a text so that nothing else changes. The message says why, without a period. */
public final class NotSpliced extends Exception {
    private static final long serialVersionUID = 1L;
    private final boolean wrong;

    private NotSpliced(String why, boolean wrong) {
        super(why);
        this.wrong = wrong;
    }

    NotSpliced(String why) {
        this(why, false);
    }

    /** The answer itself is wrong; entering it by hand would not help. */
    static NotSpliced wrong(String why) {
        return new NotSpliced(why, true);
    }

    boolean isWrong() {
        return wrong;
    }
}
