package bayproof.vocabulary;

/**
 * The channels of an amplifier.
 *
 * @param accounted whether each is either in use or known to stay free
 * @param open      the channels that are neither or both
 */
public record AmplifierChannels(String subject, At at, Shown<Boolean> accounted, Shown<String> open) implements Fact {
}
