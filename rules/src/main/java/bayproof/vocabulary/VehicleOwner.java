package bayproof.vocabulary;

/**
 * Whose vehicle it is.
 *
 * @param kind    kind of owner
 * @param returns whether it goes back to somebody else as it was
 */
public record VehicleOwner(String subject, At at, Shown<String> kind, Shown<Boolean> returns) implements Fact {
}
