package bayproof.vocabulary;

/**
 * A signal input of an amplifier or processor and what feeds it.
 *
 * @param oneKind whether all that feeds it is of one kind, line level or speaker level
 * @param seen    what feeds it, for the report
 */
public record FedInput(String subject, At at, Shown<Boolean> oneKind, Shown<String> seen) implements Fact {
}
