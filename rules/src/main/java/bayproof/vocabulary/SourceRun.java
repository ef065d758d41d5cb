package bayproof.vocabulary;

/**
 * A conductor that leaves a source's live post, with what lies between the post and the first fuse.
 *
 * @param source             id of the source
 * @param kind               kind of source
 * @param fused              false when a complete path reaches a load without a fuse
 * @param lengthToFuseMetres conductor length from the post to the first fuse, all runs in series added, the longest branch
 * @param sheathed           whether the whole of that length lies in a sheath or enclosure
 * @param shorten            the length to shorten
 */
public record SourceRun(String subject, At at, String source, SourceKind kind, Shown<Boolean> fused,
                        Shown<Double> lengthToFuseMetres, Shown<Boolean> sheathed, Knob shorten) implements Fact {
}
