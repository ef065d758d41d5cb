package bayproof.vocabulary;

/**
 * The cone of an enclosed speaker over the played band.
 *
 * @param travelMetres farthest travel to one side
 * @param linearMetres linear travel of its data sheet
 * @param what what is worked out, with its frequency
 */
public record ConeTravel(String subject, At at, Shown<Double> travelMetres, Shown<Double> linearMetres, String what) implements Fact {
}
