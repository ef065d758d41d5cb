package bayproof.vocabulary;

/**
 * A found thing and what its owner knows of it.
 *
 * @param belongsTo whose it is
 * @param told that the owner was told
 */
public record SettledFind(String subject, At at, Shown<String> belongsTo, Shown<Attestation> told) implements Fact {
}
