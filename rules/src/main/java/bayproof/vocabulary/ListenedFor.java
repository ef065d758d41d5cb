package bayproof.vocabulary;

/**
 * One thing that was listened for.
 *
 * @param noun what it is
 * @param result what was heard
 * @param word who listened, when and how
 */
public record ListenedFor(String subject, At at, String noun, Shown<String> result, Shown<Attestation> word) implements Fact {
}
