package bayproof.vocabulary;

/**
 * The strap from the battery's negative post to the body.
 *
 * @param returnShare current that the job leads into the body at full sine, in the worse of the states charging full and on
 *                    battery, as a share of what all straps of that battery may carry
 */
public record BodyStrap(String subject, At at, Shown<Double> returnShare) implements Fact {
}
