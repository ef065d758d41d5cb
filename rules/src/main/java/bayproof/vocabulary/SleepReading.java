package bayproof.vocabulary;

/**
 * The current asleep of the finished vehicle, measured.
 *
 * @param latches whether every latch was closed
 * @param keyMetres distance of the key
 * @param meter how the meter went in
 * @param waited time until the last point as a share of the time until the vehicle sleeps
 * @param fall fall between the last two points as a share of the last but one
 * @param asleepShare time until it drew no more than is allowed, as a share of the time until the vehicle sleeps
 * @param standbyShare current at the last point as a share of what is allowed
 */
public record SleepReading(String subject, At at, Shown<String> latches, Shown<Double> keyMetres, Shown<String> meter, Shown<Double> waited, Shown<Double> fall,
                           Shown<Double> asleepShare, Shown<Double> standbyShare) implements Fact {
}
