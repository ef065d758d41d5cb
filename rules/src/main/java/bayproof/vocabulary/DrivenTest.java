package bayproof.vocabulary;

/**
 * The drive with the audio on before the vehicle goes back.
 *
 * @param seconds time that was driven
 * @param word    who drove, when, and what shows it
 */
public record DrivenTest(String subject, At at, Shown<Double> seconds, Shown<Attestation> word) implements Fact {
}
