package bayproof.vocabulary;

/**
 * A planned run on a post of the vehicle's battery, or one that could end there.
 *
 * @param sensed whether the vehicle has a current sensor at all
 * @param clear  whether the run leaves the post with the sensor free
 * @param sensor where the sensor sits, for the report
 */
public record PostRun(String subject, At at, Shown<Boolean> sensed, Shown<Boolean> clear,
                      Shown<String> sensor) implements Fact {
}
