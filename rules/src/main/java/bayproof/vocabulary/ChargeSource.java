package bayproof.vocabulary;

/**
 * A source that charges while the engine runs.
 *
 * @param balanceAmperes output at hot idle less the vehicle's own load and the job's draw at normal programme
 */
public record ChargeSource(String subject, At at, SourceKind kind, Shown<Double> balanceAmperes) implements Fact {
}
