package bayproof.vocabulary;

/**
 * A thing of the audio chain, with the loops that shields and grounds close through it.
 *
 * @param free whether none does
 * @param loop the runs of the shortest loop, for the report
 */
public record ShieldLoop(String subject, At at, Shown<Boolean> free, Shown<String> loop) implements Fact {
}
