package bayproof.vocabulary;

/**
 * A fuse, or all fuses of a block, and what they may have to interrupt.
 *
 * @param highestVolts    highest volts of its circuit
 * @param ratedVolts      volts that it is rated for
 * @param faultAmperes    largest current that a dead short straight behind it draws
 * @param breakingAmperes largest current that it can interrupt
 */
public record FuseDuty(String subject, At at, Shown<Double> highestVolts, Shown<Double> ratedVolts, Shown<Double> faultAmperes,
                       Shown<Double> breakingAmperes) implements Fact {
}
