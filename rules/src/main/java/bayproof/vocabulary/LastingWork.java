package bayproof.vocabulary;

/**
 * Planned work that cannot be undone: a hole or a cut.
 *
 * @param lasting    whether it leaves a hole or a cut
 * @param ofAnother  whether somebody else than the customer owns the vehicle
 * @param word       the owner's word to it
 */
public record LastingWork(String subject, At at, Shown<Boolean> lasting, Shown<Boolean> ofAnother, Shown<Attestation> word) implements Fact {
}
