package bayproof.vocabulary;

/**
 * An enclosure and the mass that is written for it.
 *
 * @param share mass written, as a share of the least that its walls, its bracing and its speakers come to
 */
public record WeighedBox(String subject, At at, Shown<Double> share) implements Fact {
}
