package bayproof.vocabulary;

/**
 * An item that takes or gives current, with the first conductor of its return.
 *
 * @param shareOfFeed area of the return as a share of the area of the feed
 * @param largerSize  sizes above the planned one, for the return
 */
public record ReturnPath(String subject, At at, Shown<Double> shareOfFeed, Knob largerSize) implements Fact {
}
