package bayproof.vocabulary;

/**
 * A closed enclosure with its driven speakers.
 *
 * @param closed whether it is closed
 * @param peakDecibels height of the peak of its response
 * @param what what is worked out, with its Q and resonance
 */
public record ClosedResponse(String subject, At at, Shown<Boolean> closed, Shown<Double> peakDecibels, String what) implements Fact {
}
