package bayproof.vocabulary;

/** What runs keep away from. */
public enum KeepOutKind {
    FUEL("fuel"), BRAKE("brake"), EXHAUST("exhaust"), MOVING("moving"), RESTRAINT_PATH("restraint-path"), HIGH_VOLTAGE("high-voltage");

    private final String word;

    KeepOutKind(String word) {
        this.word = word;
    }

    /** The word of the vehicle sheet. */
    public String word() {
        return word;
    }
}
