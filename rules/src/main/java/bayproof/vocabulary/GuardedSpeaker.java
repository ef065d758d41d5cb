package bayproof.vocabulary;

/**
 * A speaker that low tones destroy.
 *
 * @param small whether it is a tweeter or midrange on an output of its own, not behind a complete passive network
 * @param cornerHertz high-pass corner before it
 * @param lowestHertz lowest corner its data sheet allows
 * @param corner corner of the filter
 */
public record GuardedSpeaker(String subject, At at, Shown<Boolean> small, Shown<Double> cornerHertz, Shown<Double> lowestHertz,
        Knob corner) implements Fact {
}
