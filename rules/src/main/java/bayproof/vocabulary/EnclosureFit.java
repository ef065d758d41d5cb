package bayproof.vocabulary;

/**
 * An enclosure in its space.
 *
 * @param tightest  what is measured, with the direction and the seat position in which least room is left
 * @param gapMetres room left on each side there
 * @param smaller   smaller outer sizes in that direction
 */
public record EnclosureFit(String subject, At at, String tightest, Shown<Double> gapMetres, Knob smaller) implements Fact {
}
