package bayproof.vocabulary;

/**
 * Something found in the vehicle, held against the estimate.
 *
 * @param late   whether it was found after the customer had authorized the estimate
 * @param agreed who says that the customer agreed to what becomes of it
 * @param again  whether that was said after it was found
 */
public record LateFind(String subject, At at, Shown<Boolean> late, Shown<Attestation> agreed, Shown<Boolean> again) implements Fact {
}
