package bayproof.vocabulary;

/**
 * An amplifier and what its own fuses let through.
 *
 * @param ratedWatts continuous output of all its channels together as rated
 * @param plausibleWatts the most that its own fuses let through at its rating volts and the best efficiency of its class
 */
public record RatedAmplifier(String subject, At at, Shown<Double> ratedWatts, Shown<Double> plausibleWatts) implements Fact {
}
