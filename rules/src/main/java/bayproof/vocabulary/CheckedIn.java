package bayproof.vocabulary;

/**
 * One thing that is written down when a vehicle comes in.
 *
 * @param noun what it is
 * @param seen what was written
 * @param word who vouches for it
 */
public record CheckedIn(String subject, At at, String noun, Shown<String> seen, Shown<Attestation> word) implements Fact {
}
