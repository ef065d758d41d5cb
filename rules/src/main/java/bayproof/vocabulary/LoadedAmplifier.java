package bayproof.vocabulary;

/**
 * What was measured at an amplifier while it played loud.
 *
 * @param dropShare feed and ground drop at its loud current, as a share of the reference volts
 * @param groundVolts drop of the ground side
 * @param jointVolts greatest drop at one joint or fuse
 * @param caseCelsius temperature of its case after the heat soak
 */
public record LoadedAmplifier(String subject, At at, Shown<Double> dropShare, Shown<Double> groundVolts, Shown<Double> jointVolts, Shown<Double> caseCelsius) implements Fact {
}
