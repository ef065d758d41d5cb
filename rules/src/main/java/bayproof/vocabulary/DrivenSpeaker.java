package bayproof.vocabulary;

/**
 * A speaker and the power that reaches it.
 *
 * @param direct whether its coils hang on an output themselves, not behind a complete passive network
 * @param powerShare power that reaches it as a share of its rating
 * @param limiter power of the limiter on its output
 */
public record DrivenSpeaker(String subject, At at, Shown<Boolean> direct, Shown<Double> powerShare, Knob limiter) implements Fact {
}
