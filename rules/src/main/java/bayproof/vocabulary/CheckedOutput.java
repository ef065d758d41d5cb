package bayproof.vocabulary;

/**
 * An amplifier output before a speaker hangs on it.
 *
 * @param toBodyOhms least resistance from either speaker wire to the body
 * @param directVolts DC volts at the output
 */
public record CheckedOutput(String subject, At at, Shown<Double> toBodyOhms, Shown<Double> directVolts) implements Fact {
}
