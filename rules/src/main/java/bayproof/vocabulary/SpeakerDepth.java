package bayproof.vocabulary;

/**
 * A speaker that is not built into an enclosure, in its place.
 *
 * @param roomMetres depth left behind it
 * @param glass whether its place is in a door, where glass comes down
 */
public record SpeakerDepth(String subject, At at, Shown<Double> roomMetres, boolean glass) implements Fact {
}
