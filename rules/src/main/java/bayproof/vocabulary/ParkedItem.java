package bayproof.vocabulary;

/**
 * A powered item while the vehicle is asleep.
 *
 * @param asks     whether it asks on a data bus, in a word
 * @param settled  whether it does not ask, or a sleep measurement is among the steps
 */
public record ParkedItem(String subject, At at, Shown<String> asks, Shown<Boolean> settled) implements Fact {
}
