package bayproof.splice;

/** A value cannot be put into a text so that nothing else changes. The message says why, without a period. */
public final class NotSpliced extends Exception {
    private static final long serialVersionUID = 1L;

    NotSpliced(String why) {
        super(why);
    }
}
