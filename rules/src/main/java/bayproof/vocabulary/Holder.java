package bayproof.vocabulary;

/**
 * A fuse in its holder, or in the outlet of a block.
 *
 * @param ratingAmperes rating of the fuse
 * @param madeForAmperes most current that the holder or outlet is made for
 * @param smallerFuse   ratings below the planned one
 */
public record Holder(String subject, At at, Shown<Double> ratingAmperes, Shown<Double> madeForAmperes, Knob smallerFuse) implements Fact {
}
