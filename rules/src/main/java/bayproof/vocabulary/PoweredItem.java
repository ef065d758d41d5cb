package bayproof.vocabulary;

/**
 * A powered item with what its feed and return lose together, as a share of the reference volts.
 *
 * @param loudDrop   at loud programme, in the worse of the states charging full and on battery
 * @param sineDrop   at full sine, in the worse of the same states
 * @param largerSize sizes above the planned one, for the run that loses most
 */
public record PoweredItem(String subject, At at, Shown<Double> loudDrop, Shown<Double> sineDrop, Knob largerSize) implements Fact {
}
