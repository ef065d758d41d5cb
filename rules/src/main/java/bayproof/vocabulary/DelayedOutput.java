package bayproof.vocabulary;

/**
 * An output of a system whose bands belong together.
 *
 * @param errorSeconds how far its delay is from what the ways to the listener ask for
 * @param delaySeconds the delay that is set
 * @param delay other delays
 */
public record DelayedOutput(String subject, At at, Shown<Double> errorSeconds, Shown<Double> delaySeconds, Knob delay) implements Fact {
}
