package bayproof.vocabulary;

/**
 * The order of work as a whole.
 *
 * @param ordered whether the steps can be done one after the other
 * @param loop    the steps that wait for each other; empty where none do
 */
public record WorkPlan(String subject, At at, Shown<Boolean> ordered, Shown<String> loop) implements Fact {
}
