package bayproof.vocabulary;

/**
 * A step of work with its tools.
 *
 * @param atHand  whether the shop has them all
 * @param lacking the tools it does not have
 */
public record ToolUse(String subject, At at, Shown<Boolean> atHand, Shown<String> lacking) implements Fact {
}
