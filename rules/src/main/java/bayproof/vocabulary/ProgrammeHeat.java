package bayproof.vocabulary;

/**
 * A speaker and what a loud programme makes of it.
 *
 * @param direct whether its coils hang on an output themselves, not behind a complete passive network
 * @param share power of a loud programme that reaches it as a share of its rating
 * @param what what is worked out, with its band
 * @param limiter power of the limiter on its output
 */
public record ProgrammeHeat(String subject, At at, Shown<Boolean> direct, Shown<Double> share, String what, Knob limiter) implements Fact {
}
