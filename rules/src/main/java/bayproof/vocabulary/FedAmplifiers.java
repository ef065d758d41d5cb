package bayproof.vocabulary;

/**
 * A fuse with the amplifiers that it is the last fuse before.
 *
 * @param ownAmperes    fuses on those amplifiers, added up
 * @param ratingAmperes rating of the fuse
 */
public record FedAmplifiers(String subject, At at, Shown<Double> ownAmperes, Shown<Double> ratingAmperes) implements Fact {
}
