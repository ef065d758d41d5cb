package bayproof.vocabulary;

/**
 * A pass-through that runs go through.
 *
 * @param power whether a feed or return goes through it
 * @param metal whether its panel is metal
 * @param edge  what guards its edge
 * @param guard the guard to fit
 */
public record HoleEdge(String subject, At at, boolean power, Shown<Boolean> metal, Shown<String> edge, Knob guard) implements Fact {
}
