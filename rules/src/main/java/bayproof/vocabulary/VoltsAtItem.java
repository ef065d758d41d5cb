package bayproof.vocabulary;

/**
 * A thing on the supply and the volts it may meet.
 *
 * @param highestVolts the highest it has to stand
 * @param stoodVolts   what it is made for
 */
public record VoltsAtItem(String subject, At at, Shown<Double> highestVolts, Shown<Double> stoodVolts) implements Fact {
}
