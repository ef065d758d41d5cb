package bayproof.vocabulary;

/**
 * The gains of all outputs together.
 *
 * @param spread how far apart the levels of their test tones lie, dB
 */
public record GainStructure(String subject, At at, Shown<Double> spread) implements Fact {
}
