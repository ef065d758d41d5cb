package bayproof.vocabulary;

/**
 * The settings of a channel of sound and the signal that they were made on.
 *
 * @param set  whether the job has settings at all
 * @param fits whether they were made on what the channel brings now
 * @param seen what they were made on and what the channel brings, for the report
 */
public record CarriedSettings(String subject, At at, Shown<Boolean> set, Shown<Boolean> fits, Shown<String> seen) implements Fact {
}
