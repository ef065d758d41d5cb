package bayproof.vocabulary;

/**
 * A fastener on which returns lie one over the other: that of a ground point, or the fullest one of a ground bar.
 *
 * @param eyelets how many lie on it
 */
public record EyeletStack(String subject, At at, Shown<String> eyelets) implements Fact {
}
