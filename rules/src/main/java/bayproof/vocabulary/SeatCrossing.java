package bayproof.vocabulary;

/**
 * A run that may reach a seat from the body.
 *
 * @param crosses      whether it does
 * @param slackMetres  its spare length
 * @param travelMetres longest way that the seat moves
 * @param looser       larger spare lengths
 */
public record SeatCrossing(String subject, At at, Shown<Boolean> crosses, Shown<Double> slackMetres, Shown<Double> travelMetres, Knob looser) implements Fact {
}
