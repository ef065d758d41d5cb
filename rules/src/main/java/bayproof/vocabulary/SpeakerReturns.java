package bayproof.vocabulary;

/**
 * The returns of the speakers on an amplifier output or behind a factory connector.
 *
 * @param apart whether each speaker's return meets neither that of another channel nor the body
 * @param seen  what it meets, or how the vehicle's own wiring is made; for the report
 */
public record SpeakerReturns(String subject, At at, Shown<Boolean> apart, Shown<String> seen) implements Fact {
}
