package bayproof.vocabulary;

/**
 * A source that charges the vehicle's own battery.
 *
 * @param balanceAmperes output at hot idle, of a converter its continuous output, less the vehicle's own load and the job's draw at normal programme
 * @param fullAmperes    the same with its full output
 * @param batteryAmperes what the vehicle's own batteries take while they are charged
 */
public record ChargeSource(String subject, At at, SourceKind kind, Shown<Double> balanceAmperes, Shown<Double> fullAmperes,
                           Shown<Double> batteryAmperes) implements Fact {
}
