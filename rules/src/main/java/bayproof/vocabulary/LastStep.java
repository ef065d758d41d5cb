package bayproof.vocabulary;

/**
 * The handover among the steps.
 *
 * @param last  whether there is one and every other step comes before it
 * @param later what does not come before it
 */
public record LastStep(String subject, At at, Shown<Boolean> last, Shown<String> later) implements Fact {
}
