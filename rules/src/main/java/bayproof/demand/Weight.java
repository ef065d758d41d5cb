package bayproof.demand;

/** What a broken rule means, from light to heavy. */
public enum Weight {
    /** Worth doing. */
    ADVISE,
    /** Correct before handover. */
    FIX,
    /** Can hurt someone or the vehicle. */
    STOP;

    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    public boolean atLeast(Weight other) {
        return compareTo(other) >= 0;
    }

    public static Weight of(String word) {
        return valueOf(word.toUpperCase(java.util.Locale.ROOT));
    }
}
