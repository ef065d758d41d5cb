package bayproof.vocabulary;

/**
 * An enclosure on its way into its space.
 *
 * @param gapMetres room left on each side in the smallest opening
 */
public record WayIn(String subject, At at, Shown<Double> gapMetres) implements Fact {
}
