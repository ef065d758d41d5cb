package bayproof.vocabulary;

/**
 * Two neighboring outputs of one amplifier, such as left and right.
 *
 * @param alike      whether they carry the same load of the same kind of speakers
 * @param apartShare how far their readings lie apart, as a share of the smaller
 */
public record MatchedOutputs(String subject, At at, Shown<Boolean> alike, Shown<Double> apartShare) implements Fact {
}
