package bayproof.vocabulary;

/**
 * Something rules speak about: a flat immutable record with a subject and a position.
 * Nothing in it is null; what can be missing is a {@link Shown}.
 */
public interface Fact {
    /** Path of keys that names the subject, such as {@code runs.feed-1}. */
    String subject();

    /** Where the subject stands, or would stand. */
    At at();
}
