package bayproof.vocabulary;

/**
 * A fuse, or one outlet of a block, and the side of the supply that it sits in.
 *
 * @param groundedNegative whether the negative side of the vehicle is grounded
 * @param inFeed           whether it sits in no return
 */
public record FuseSide(String subject, At at, Shown<Boolean> groundedNegative, Shown<Boolean> inFeed) implements Fact {
}
