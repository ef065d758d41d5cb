package bayproof.vocabulary;

/**
 * A pin, ground point or depth that the work relies on.
 *
 * @param seen that it was seen on this car; seen elsewhere it is missing
 */
public record SeenValue(String subject, At at, Shown<String> seen) implements Fact {
}
