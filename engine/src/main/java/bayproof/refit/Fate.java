package bayproof.refit;

import java.util.Locale;

/** What becomes of one thing of the old job, from the best to the worst that can be said of it. */
public enum Fate {
    CARRIES("carries over"),
    CHANGED("carries over after a change"),
    OPEN("cannot tell yet"),
    NOT("does not carry over");

    private final String says;

    Fate(String says) {
        this.says = says;
    }

    /** What is said of one thing. */
    public String says() {
        return says;
    }

    /** A word for other programs. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
