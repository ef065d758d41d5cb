package bayproof.vocabulary;

/**
 * What joins two batteries.
 *
 * @param amperes      largest current that can pass it
 * @param ratedAmperes what it is made for
 */
public record BatteryLink(String subject, At at, Shown<Double> amperes, Shown<Double> ratedAmperes) implements Fact {
}
