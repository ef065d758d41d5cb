package bayproof.vocabulary;

/**
 * What a job adds to the mass of its vehicle.
 *
 * @param counts whether it is enough to be weighed against anything
 * @param share  mass of everything that is mounted, as a share of what the vehicle may still carry
 */
public record AddedMass(String subject, At at, Shown<Boolean> counts, Shown<Double> share) implements Fact {
}
