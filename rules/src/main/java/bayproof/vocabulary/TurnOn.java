package bayproof.vocabulary;

/**
 * The turn-on input of an amplifier or a processor.
 *
 * @param source   what the way back from this input ends at
 * @param harmless whether that is known and no wire that a control unit or a restraint system needs
 */
public record TurnOn(String subject, At at, Shown<String> source, boolean harmless) implements Fact {
}
