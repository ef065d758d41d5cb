package bayproof.vocabulary;

/**
 * A planned run and the hinges it crosses.
 *
 * @param crosses     whether one of its pass-throughs crosses a hinge
 * @param guard       what carries it across: where several hinges are crossed, one that is no boot before any other
 * @param slackMetres spare length at the hinge
 * @param looser      more spare length
 */
public record HingeCrossing(String subject, At at, Shown<Boolean> crosses, Shown<String> guard, Shown<Double> slackMetres,
                            Knob looser) implements Fact {
}
