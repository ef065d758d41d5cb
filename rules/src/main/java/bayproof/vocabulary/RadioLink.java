package bayproof.vocabulary;

/**
 * An interface, or an amplifier whose signal should come from one.
 *
 * @param listed whether the interface is listed for this radio variant, its connectors and its factory amplifier
 * @param radio  the combination asked for, for the report
 */
public record RadioLink(String subject, At at, Shown<Boolean> listed, Shown<String> radio) implements Fact {
}
