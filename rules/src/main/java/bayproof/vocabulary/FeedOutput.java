package bayproof.vocabulary;

/**
 * An output of the vehicle that gives current to others.
 *
 * @param used    whether anything of the job hangs on it
 * @param amperes what hangs on it draws at full sine, together
 * @param limit   the most it gives
 */
public record FeedOutput(String subject, At at, Shown<Boolean> used, Shown<Double> amperes, Shown<Double> limit) implements Fact {
}
