package bayproof.vocabulary;

/**
 * The supply of the vehicle as a whole.
 *
 * @param used whether the job takes current from it or gives it any
 * @param side which side of it is grounded
 */
public record GroundedSupply(String subject, At at, Shown<Boolean> used, Shown<String> side) implements Fact {
}
