package bayproof.vocabulary;

/**
 * A run that was left unfinished at the end of the last visit.
 *
 * @param open whether any is
 * @param fuseOut whether its fuse is out
 * @param capped whether its end is capped
 * @param tagged whether it is tagged
 * @param word who left it so
 */
public record UnfinishedRun(String subject, At at, Shown<Boolean> open, Shown<Boolean> fuseOut, Shown<Boolean> capped, Shown<Boolean> tagged,
                            Shown<Attestation> word) implements Fact {
}
