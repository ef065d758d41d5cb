package bayproof.vocabulary;

/**
 * What a job adds to the mass of its vehicle.
 *
 * @param counts         whether it is enough to be weighed against anything
 * @param addedKilograms mass of everything that is mounted
 * @param leftKilograms  what the vehicle may still carry
 */
public record AddedMass(String subject, At at, Shown<Boolean> counts, Shown<Double> addedKilograms, Shown<Double> leftKilograms) implements Fact {
}
