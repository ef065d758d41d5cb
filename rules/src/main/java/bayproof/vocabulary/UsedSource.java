package bayproof.vocabulary;

/**
 * A source of the supply.
 *
 * @param used  whether the job takes current from it or gives it any
 * @param volts the highest volts it gives by itself
 */
public record UsedSource(String subject, At at, Shown<Boolean> used, Shown<Double> volts) implements Fact {
}
