package bayproof.vocabulary;

/**
 * A fuse holder or fuse block where it sits.
 *
 * @param wet    whether water reaches the zone it sits in
 * @param zone   kind of that zone, for the report
 * @param sealed whether it keeps water out
 */
public record HolderPlace(String subject, At at, Shown<Boolean> wet, Shown<String> zone, Shown<Boolean> sealed) implements Fact {
}
