package bayproof.vocabulary;

/**
 * A planned item that a step fits, or a step that does not say what it needs.
 *
 * @param opened whether the vehicle is taken apart at all
 * @param onHand whether the item is on hand before that, and a later step fits it
 */
public record NeededPart(String subject, At at, Shown<Boolean> opened, Shown<Boolean> onHand) implements Fact {
}
