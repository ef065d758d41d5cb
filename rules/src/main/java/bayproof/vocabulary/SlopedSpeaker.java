package bayproof.vocabulary;

/**
 * A small speaker and how far the filters before it have fallen at its resonance.
 *
 * @param small whether it is a tweeter or midrange on an output of its own
 * @param fallDecibels fall of all filters and of a capacitor together, at the free-air resonance
 * @param order order of the high-pass
 */
public record SlopedSpeaker(String subject, At at, Shown<Boolean> small, Shown<Double> fallDecibels, Knob order) implements Fact {
}
