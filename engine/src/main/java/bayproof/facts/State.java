package bayproof.facts;

/** What supplies the vehicle. */
enum State {
    CHARGING_FULL("charging full"), ON_BATTERY("on battery"), CHARGING_IDLE("charging idle"),
    /** The starter turns the engine: the vehicle's battery gives no more than its dip volts. */
    CRANKING("cranking");

    private final String words;

    State(String words) {
        this.words = words;
    }

    /** Whether what charges the vehicle gives current. */
    boolean charges() {
        return this == CHARGING_FULL || this == CHARGING_IDLE;
    }

    String words() {
        return words;
    }
}
