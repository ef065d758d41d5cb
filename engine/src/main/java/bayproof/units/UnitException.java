package bayproof.units;

/** A text is not the quantity or the cable size it should be; says what is wrong and how to write it. */
public final class UnitException extends Exception {
    private static final long serialVersionUID = 1L;
    private final String what;
    private final String fix;

    UnitException(String what, String fix) {
        super(what + " " + fix);
        this.what = what;
        this.fix = fix;
    }

    /** What is wrong, one sentence. */
    public String what() {
        return what;
    }

    /** What to write instead, one sentence. */
    public String fix() {
        return fix;
    }
}
