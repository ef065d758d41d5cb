package bayproof.vocabulary;

/**
 * A step that may bring power back.
 *
 * @param powers whether it does
 * @param last   whether every step that must be finished before power comes before it
 * @param early  the steps that do not
 */
public record PowerStep(String subject, At at, Shown<Boolean> powers, Shown<Boolean> last, Shown<String> early) implements Fact {
}
