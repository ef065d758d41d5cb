package bayproof.vocabulary;

/**
 * A fuse, or one outlet of a block, on its way.
 *
 * @param alone  whether no other fuse lies beside it on the same way
 * @param beside the others that do
 */
public record FusePath(String subject, At at, Shown<Boolean> alone, Shown<String> beside) implements Fact {
}
