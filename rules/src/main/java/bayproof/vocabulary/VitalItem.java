package bayproof.vocabulary;

/**
 * An interface or processor with the vehicle outputs that feed or wake it.
 *
 * @param kept whether none of them is switched off by the vehicle itself
 * @param from those outputs, for the report
 */
public record VitalItem(String subject, At at, Shown<Boolean> kept, Shown<String> from) implements Fact {
}
