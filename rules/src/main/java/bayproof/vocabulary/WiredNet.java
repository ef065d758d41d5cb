package bayproof.vocabulary;

/**
 * The coils that hang on one output.
 *
 * @param asWritten whether its leads join just the coils of its net
 * @param wrong     coils that its leads join and its net does not have, or that hang on another output
 */
public record WiredNet(String subject, At at, Shown<Boolean> asWritten, Shown<String> wrong) implements Fact {
}
