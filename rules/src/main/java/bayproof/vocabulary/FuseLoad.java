package bayproof.vocabulary;

/**
 * A fuse, or an outlet of a block, with the current of its circuit.
 *
 * @param loudShare  current at loud programme as a share of the rating, in the worse of the states charging full and on battery
 * @param sineShare  current at full sine as a share of the rating, in the worse of the same states
 * @param larger     ratings above the planned one
 */
public record FuseLoad(String subject, At at, Shown<Double> loudShare, Shown<Double> sineShare, Knob larger) implements Fact {
}
