package bayproof.vocabulary;

/**
 * A thing of the audio chain with the ground point it returns to.
 *
 * @param offsetVolts volts between that point and the signal ground at loud programme, in the worse of the states charging
 *                    full and on battery; 0 where it is the same point
 */
public record SignalReturn(String subject, At at, Shown<Double> offsetVolts) implements Fact {
}
