package bayproof.vocabulary;

/**
 * Whose vehicle it is.
 *
 * @param kind    kind of owner
 * @param returns whether it goes back to somebody else as it was
 * @param day     day on which it does
 * @param ahead   whether that day lies after the plan
 */
public record VehicleOwner(String subject, At at, Shown<String> kind, Shown<Boolean> returns, Shown<String> day, Shown<Boolean> ahead) implements Fact {
}
