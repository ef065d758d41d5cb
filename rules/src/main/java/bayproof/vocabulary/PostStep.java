package bayproof.vocabulary;

/**
 * A step that may take the battery off or put it back.
 *
 * @param handles whether it does
 * @param inTurn  whether the negative post is the first one off, or the last one on
 * @param post    when the negative post is handled
 */
public record PostStep(String subject, At at, Shown<Boolean> handles, Shown<Boolean> inTurn, Shown<String> post) implements Fact {
}
