package bayproof.facts;

/** What supplies the vehicle. */
enum State {
    CHARGING_FULL("charging full"), ON_BATTERY("on battery"), CHARGING_IDLE("charging idle");

    private final String words;

    State(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
