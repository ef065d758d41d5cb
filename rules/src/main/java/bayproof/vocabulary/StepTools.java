package bayproof.vocabulary;

/**
 * A step of work against the tools that work of its kind takes.
 *
 * @param applies whether its kind takes any
 * @param named   whether the step names each of them
 * @param lacking the tools it does not name
 */
public record StepTools(String subject, At at, Shown<Boolean> applies, Shown<Boolean> named, Shown<String> lacking) implements Fact {
}
