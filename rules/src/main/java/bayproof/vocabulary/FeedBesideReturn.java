package bayproof.vocabulary;

/**
 * Feed and return of an item.
 *
 * @param leads    whether both leave the zone of the item
 * @param together whether one goes wherever the other goes
 * @param ways     where each of them goes
 */
public record FeedBesideReturn(String subject, At at, Shown<Boolean> leads, Shown<Boolean> together, Shown<String> ways) implements Fact {
}
