package bayproof.refit;

import java.util.Locale;

/** What becomes of one thing of the old job, from the best to the worst that can be said of it. */
public enum Fate {
    CARRIES("carries over", "carry over"),
    CHANGED("carries over after a change", "carry over after a change"),
    OPEN("cannot tell yet", "cannot be told yet"),
    NOT("does not carry over", "do not carry over");

    private final String says;
    private final String many;

    Fate(String says, String many) {
        this.says = says;
        this.many = many;
    }

    /** What is said of one thing. */
    public String says() {
        return says;
    }

    /** What is said of several things. */
    public String many() {
        return many;
    }

    /** A word for other programs. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
