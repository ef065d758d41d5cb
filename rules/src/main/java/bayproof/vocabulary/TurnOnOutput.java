package bayproof.vocabulary;

/**
 * An output that turns something on.
 *
 * @param drawAmperes  current of all inputs that hang on it
 * @param limitAmperes most current it gives
 */
public record TurnOnOutput(String subject, At at, Shown<Double> drawAmperes, Shown<Double> limitAmperes) implements Fact {
}
