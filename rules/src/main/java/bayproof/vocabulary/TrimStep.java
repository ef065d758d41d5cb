package bayproof.vocabulary;

/**
 * A step that may close the trim.
 *
 * @param closes whether it does
 * @param tested whether a function test comes before it
 */
public record TrimStep(String subject, At at, Shown<Boolean> closes, Shown<Boolean> tested) implements Fact {
}
