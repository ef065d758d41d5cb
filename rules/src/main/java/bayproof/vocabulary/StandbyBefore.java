package bayproof.vocabulary;

/**
 * The current that the vehicle draws asleep before the job.
 *
 * @param needed whether the job adds anything that draws current
 * @param word   who measured it, when and with what
 * @param first  whether that was before the finished vehicle was measured
 */
public record StandbyBefore(String subject, At at, Shown<Boolean> needed, Shown<Attestation> word, Shown<Boolean> first) implements Fact {
}
