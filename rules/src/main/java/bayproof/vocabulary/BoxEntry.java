package bayproof.vocabulary;

/**
 * A cable to a speaker, with the way it takes into the enclosure.
 *
 * @param boxed  whether the speaker sits in an enclosure
 * @param sealed whether one of the holes on the cable's way is an entry that keeps air in
 * @param edges  how the holes on its way are finished
 */
public record BoxEntry(String subject, At at, Shown<Boolean> boxed, Shown<Boolean> sealed, Shown<String> edges) implements Fact {
}
