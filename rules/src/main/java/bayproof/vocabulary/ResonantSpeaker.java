package bayproof.vocabulary;

/**
 * A small speaker and its free-air resonance.
 *
 * @param small whether it is a tweeter or midrange on an output of its own
 * @param share high-pass corner before it over its resonance
 * @param corner higher corners
 */
public record ResonantSpeaker(String subject, At at, Shown<Boolean> small, Shown<Double> share, Knob corner) implements Fact {
}
