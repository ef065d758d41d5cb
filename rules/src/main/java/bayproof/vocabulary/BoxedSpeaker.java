package bayproof.vocabulary;

/**
 * A speaker and its enclosure.
 *
 * @param plays     what part of the sound it plays
 * @param subwoofer whether it is a subwoofer
 * @param enclosed  whether it is built into an enclosure of this job
 */
public record BoxedSpeaker(String subject, At at, Shown<String> plays, Shown<Boolean> subwoofer, Shown<Boolean> enclosed) implements Fact {
}
