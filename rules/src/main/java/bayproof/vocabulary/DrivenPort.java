package bayproof.vocabulary;

/**
 * A vented enclosure whose speakers hang on an output.
 *
 * @param vented             whether it is vented
 * @param airMetresPerSecond fastest air in the port over the played band
 * @param what               what is worked out, with frequency and volts
 * @param lowCutShare        corner of the high-pass before its speakers over the tuning
 * @param corner             other corners of the high-pass
 */
public record DrivenPort(String subject, At at, Shown<Boolean> vented, Shown<Double> airMetresPerSecond, String what, Shown<Double> lowCutShare,
        Knob corner) implements Fact {
}
