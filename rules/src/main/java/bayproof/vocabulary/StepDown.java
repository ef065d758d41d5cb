package bayproof.vocabulary;

/**
 * A feed conductor that begins where another one ends.
 *
 * @param smaller         whether it carries less than the conductor before it
 * @param fused           false when it reaches a load and no fuse that fits it lies before or on the way
 * @param unguardedMetres its length that no fitting fuse guards; 0 when the fuse before it fits
 * @param sheathed        whether that length lies in a sheath or enclosure
 * @param largerSize      sizes above the planned one
 */
public record StepDown(String subject, At at, Shown<Boolean> smaller, Shown<Boolean> fused, Shown<Double> unguardedMetres,
                       Shown<Boolean> sheathed, Knob largerSize) implements Fact {
}
