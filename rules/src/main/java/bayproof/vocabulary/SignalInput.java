package bayproof.vocabulary;

/**
 * A signal input and what arrives there.
 *
 * @param presentVolts greatest clean volts that arrive
 * @param mostVolts greatest clean volts the input takes
 */
public record SignalInput(String subject, At at, Shown<Double> presentVolts, Shown<Double> mostVolts) implements Fact {
}
