package bayproof.vocabulary;

/**
 * A channel of an amplifier, whether it is wired or not.
 *
 * @param decided whether a speaker hangs on it, or it is written down as spare and muted
 * @param seen what is planned
 */
public record AmplifierChannel(String subject, At at, Shown<Boolean> decided, Shown<String> seen) implements Fact {
}
