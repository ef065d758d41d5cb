package bayproof.demand;

import java.util.Locale;

/** When a rule is due, in the order of the work. */
public enum Gate {
    BEFORE_ORDER("order"),
    BEFORE_TEARDOWN("open the vehicle"),
    BEFORE_POWER("put the fuse in"),
    HANDOVER("hand the keys back");

    private final String act;

    Gate(String act) {
        this.act = act;
    }

    /** The act that waits for this gate, as a verb phrase. */
    public String act() {
        return act;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Gate of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
