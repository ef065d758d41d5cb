package bayproof.vocabulary;

/**
 * A reading beside what was planned for the same value.
 *
 * @param alone   whether nobody wrote why it differs
 * @param apart   how far the two lie apart, as a share of the larger
 * @param planned the planned value, as it was written
 */
public record PlannedReading(String subject, At at, Shown<Boolean> alone, Shown<Double> apart, Shown<String> planned) implements Fact {
}
