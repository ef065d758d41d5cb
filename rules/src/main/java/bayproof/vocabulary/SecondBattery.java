package bayproof.vocabulary;

/**
 * A battery beside the one the engine starts from.
 *
 * @param isolated whether a converter lies between the two and no conductor joins them
 * @param between  what lies between, for the report
 */
public record SecondBattery(String subject, At at, Shown<Boolean> isolated, Shown<String> between) implements Fact {
}
