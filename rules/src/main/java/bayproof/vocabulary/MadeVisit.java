package bayproof.vocabulary;

/**
 * One visit of the vehicle.
 *
 * @param dated its day
 * @param reason why it came
 * @param words the customer's words; empty where it is no comeback, and so on
 * @param cause what was found
 * @param seconds time it took
 * @param rule the rule it belongs to, or none
 */
public record MadeVisit(String subject, At at, Shown<String> dated, Shown<String> reason, Shown<String> words, Shown<String> cause,
                        Shown<Double> seconds, Shown<String> rule) implements Fact {
}
