package bayproof.vocabulary;

/**
 * One paper that goes with the vehicle.
 *
 * @param noun what it is
 * @param needed whether this job needs it
 * @param light whether it is only advised
 * @param word who made it, when and where it lies
 * @param timely whether it is no older than the work
 */
public record DeliveredPaper(String subject, At at, String noun, Shown<Boolean> needed, boolean light, Shown<Attestation> word, Shown<Boolean> timely) implements Fact {
}
