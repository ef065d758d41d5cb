package bayproof.vocabulary;

/**
 * The handover among the steps.
 *
 * @param last  whether there is one, after the function test and with no step after it
 * @param later the steps after it
 */
public record LastStep(String subject, At at, Shown<Boolean> last, Shown<String> later) implements Fact {
}
