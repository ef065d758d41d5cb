package bayproof.vocabulary;

/**
 * The times that the records of the steps carry, held against their order.
 *
 * @param kept whether no step was done before one that comes before it, as far as their times say
 * @param late pairs of which the second was done before the first
 */
public record OrderOfTimes(String subject, At at, Shown<Boolean> kept, Shown<String> late) implements Fact {
}
