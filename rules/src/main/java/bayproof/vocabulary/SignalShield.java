package bayproof.vocabulary;

/**
 * A signal run, or a thing of the audio chain that no signal run reaches.
 *
 * @param groundedAt where its shield is grounded: {@code from}, {@code to}, {@code both} or {@code neither}
 */
public record SignalShield(String subject, At at, Shown<String> groundedAt) implements Fact {
}
