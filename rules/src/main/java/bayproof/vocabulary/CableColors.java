package bayproof.vocabulary;

/**
 * The colors of all cables that the job brings.
 *
 * @param plain whether none of them is a color that warns
 * @param seen  the colors, or those that warn
 */
public record CableColors(String subject, At at, Shown<Boolean> plain, Shown<String> seen) implements Fact {
}
