package bayproof.vocabulary;

/**
 * The end of a run in a fuse holder or fuse block.
 *
 * @param taken whether the holder takes the conductor whole
 * @param sizes both sizes, for the report
 */
public record HolderEnd(String subject, At at, Shown<Boolean> taken, Shown<String> sizes) implements Fact {
}
