package bayproof.vocabulary;

/**
 * A run from one zone to another, or one whose zones nobody gave.
 *
 * @param power   whether it is a feed or return
 * @param passage the pass-throughs it goes through, when they lead from its first zone to its last
 */
public record Crossing(String subject, At at, boolean power, Shown<String> passage) implements Fact {
}
