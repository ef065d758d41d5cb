package bayproof.vocabulary;

/**
 * The gain of an amplifier output.
 *
 * @param targetVolts AC volts to be set
 * @param toneHertz frequency of the test tone
 * @param level level of the test tone against full scale, dB
 * @param askedVolts volts that the target means at full scale
 * @param fullVolts volts at rated power
 * @param gain gain that the target takes, dB
 * @param leastGain gain all the way down, dB
 * @param mostGain gain all the way up, dB
 * @param readShare volts measured as a share of the target
 * @param clipsFirst what clips first on the way of the signal as its source rises
 * @param room how far the source may rise until then, dB
 * @param lower lower targets
 */
public record GainSetting(String subject, At at, Shown<Double> targetVolts, Shown<Double> toneHertz, Shown<Double> level,
                          Shown<Double> askedVolts, Shown<Double> fullVolts, Shown<Double> gain, Shown<Double> leastGain,
                          Shown<Double> mostGain, Shown<Double> readShare, Shown<String> clipsFirst, Shown<Double> room, Knob lower) implements Fact {
}
