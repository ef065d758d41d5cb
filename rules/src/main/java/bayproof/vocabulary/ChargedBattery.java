package bayproof.vocabulary;

/**
 * Volts at a battery with the engine running and everything loud.
 *
 * @param lowVolts the least of its readings
 * @param highVolts the greatest of its readings
 * @param fallVolts fall at idle while the load lasted
 * @param leastVolts least volts its data sheet asks for
 * @param mostVolts most volts its data sheet allows
 */
public record ChargedBattery(String subject, At at, Shown<Double> lowVolts, Shown<Double> highVolts, Shown<Double> fallVolts, Shown<Double> leastVolts,
                             Shown<Double> mostVolts) implements Fact {
}
