package bayproof.vocabulary;

/**
 * The look for what earlier owners and shops left in the vehicle.
 *
 * @param look who looked, when and where
 */
public record LookedFor(String subject, At at, Shown<Attestation> look) implements Fact {
}
