package bayproof.vocabulary;

/**
 * The wires from an amplifier output to its speakers.
 *
 * @param wireShare resistance of both conductors as a share of the load
 * @param thicker thicker cable
 */
public record SpeakerCable(String subject, At at, Shown<Double> wireShare, Knob thicker) implements Fact {
}
