package bayproof.vocabulary;

/**
 * The hours of all steps against those booked.
 *
 * @param seconds hours of the steps, waiting included
 * @param booked  hours booked
 */
public record BookedWork(String subject, At at, Shown<Double> seconds, Shown<Double> booked) implements Fact {
}
