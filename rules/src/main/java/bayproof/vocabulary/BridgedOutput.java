package bayproof.vocabulary;

/**
 * A bridged amplifier output.
 *
 * @param halfOhms load into which each half works, as if into half the load
 * @param minimumOhms least rated load of one channel
 * @param listed whether the amplifier's papers list this pair as one to bridge
 * @param rewire other ways to join the same coils
 */
public record BridgedOutput(String subject, At at, Shown<Double> halfOhms, Shown<Double> minimumOhms, Shown<Boolean> listed, Knob rewire) implements Fact {
}
