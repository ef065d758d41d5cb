package bayproof.vocabulary;

/**
 * A step that may unplug restraints.
 *
 * @param unplugs       whether it does
 * @param waitedSeconds time waited between battery off and this step
 * @param doneSeconds   time really waited there
 * @param word          who waited, when, and what shows it
 * @param sheetSpeaks   whether the vehicle has a figure of its own for it
 * @param wantedSeconds that figure
 * @param pluggedAgain  whether the restraints are reconnected before every step that brings power back
 */
public record RestraintStep(String subject, At at, Shown<Boolean> unplugs, Shown<Double> waitedSeconds, Shown<Double> doneSeconds,
                            Shown<Attestation> word, boolean sheetSpeaks,
                            Shown<Double> wantedSeconds, Shown<Boolean> pluggedAgain) implements Fact {
}
