package bayproof.vocabulary;

/**
 * The step that brings power for the first time.
 *
 * @param amperes rating of the fuse that it comes through
 */
public record FirstPower(String subject, At at, Shown<Double> amperes) implements Fact {
}
