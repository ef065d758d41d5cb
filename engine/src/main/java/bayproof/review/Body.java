package bayproof.review;

/** Where the body must be to answer a question, in the order of one walk around the vehicle. */
public enum Body {
    DESK("Desk", "the plan, the customer, service data"),
    BENCH("Bench", "data sheets, labels, parts in hand"),
    HOOD("Under the hood", "battery, engine bay"),
    FOOTWELL("Driver's footwell", "cabin in front"),
    RADIO("Radio and dash", "radio, its connectors, data buses"),
    DOORS("Doors", "doors and tailgate"),
    CABIN("Cabin behind", "seats, cabin behind them"),
    CARGO("Cargo", "cargo space"),
    ROOF("Roof", "roof"),
    UNDER("Underneath and outside", "underbody, outside, trailer"),
    VEHICLE("At the vehicle", "the plan does not say yet where");

    private final String heading;
    private final String says;

    Body(String heading, String says) {
        this.heading = heading;
        this.says = says;
    }

    /** The heading of its part of a form. */
    public String heading() {
        return heading;
    }

    /** What is found there. */
    public String says() {
        return says;
    }

    /** Where a zone of a kind is reached. */
    public static Body ofZone(String kind) {
        return switch (kind) {
            case "engine-bay" -> HOOD;
            case "dash" -> RADIO;
            case "cabin-front" -> FOOTWELL;
            case "cabin-rear", "seat" -> CABIN;
            case "cargo" -> CARGO;
            case "door", "tailgate" -> DOORS;
            case "roof" -> ROOF;
            case "underbody", "outside", "trailer" -> UNDER;
            default -> VEHICLE;
        };
    }
}
