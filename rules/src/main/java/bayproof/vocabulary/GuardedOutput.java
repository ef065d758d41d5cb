package bayproof.vocabulary;

/**
 * An amplifier output and what guards a tweeter on it while settings are made.
 *
 * @param tweeter whether a tweeter hangs on it, not behind a complete passive network
 * @param guard   what guards it
 */
public record GuardedOutput(String subject, At at, Shown<Boolean> tweeter, Shown<String> guard) implements Fact {
}
