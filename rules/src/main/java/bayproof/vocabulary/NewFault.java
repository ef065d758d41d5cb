package bayproof.vocabulary;

/**
 * Fault codes or warning lamps that the vehicle did not have when it came.
 *
 * @param noun what is compared
 * @param clean whether none is new
 * @param fresh the new ones; empty for none
 * @param word who read them at the end
 */
public record NewFault(String subject, At at, String noun, Shown<Boolean> clean, Shown<String> fresh, Shown<Attestation> word) implements Fact {
}
