package bayproof.figure;

import java.util.List;

/** A figure cannot be worked out as it was asked. The message says what is wrong. */
public final class FigureMistake extends Exception {
    private static final long serialVersionUID = 1L;
    private final String fix;
    private final String unknown;
    private final transient List<String> known;

    private FigureMistake(String message, String fix, String unknown, List<String> known) {
        super(message);
        this.fix = fix;
        this.unknown = unknown;
        this.known = known;
    }

    /** @param fix what to write instead, a sentence */
    static FigureMistake of(String message, String fix) {
        return new FigureMistake(message, fix, null, List.of());
    }

    /**
     * A name that is not known here.
     *
     * @param known     the names that are
     * @param otherwise what to say where none of them is near
     */
    static FigureMistake unknown(String message, String unknown, List<String> known, String otherwise) {
        return new FigureMistake(message, otherwise, unknown, known);
    }

    public String fix() {
        return fix;
    }

    /** The name that is not known; null where the mistake is another one. */
    public String unknown() {
        return unknown;
    }

    /** The names that may have been meant. */
    public List<String> known() {
        return known;
    }
}
