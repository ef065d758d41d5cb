package bayproof.vocabulary;

/**
 * An audio output of the factory system that the job takes its sound from.
 *
 * @param from        what drives it
 * @param carries     part of the band it carries
 * @param shapedSo    whether it is as shaped as its three tones say
 * @param limitedSo   whether it limits itself as its two volume steps say
 * @param tones       the largest step between its tones, for the report
 */
public record FactoryOutput(String subject, At at, Shown<String> from, Shown<String> carries, Shown<Boolean> shapedSo, Shown<Boolean> limitedSo,
                            Shown<String> tones) implements Fact {
}
