package bayproof.vocabulary;

/**
 * An amplifier with speakers on it.
 *
 * @param stopsOnDirect whether it shuts down when DC stands at its output
 */
public record DrivingAmplifier(String subject, At at, Shown<Boolean> stopsOnDirect) implements Fact {
}
