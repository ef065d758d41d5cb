package bayproof.vocabulary;

/**
 * Days of everything that was recorded while the vehicle was in the shop.
 *
 * @param inside  whether all of them lie between its coming and its going
 * @param outside the records that do not
 */
public record RecordedDates(String subject, At at, Shown<Boolean> inside, Shown<String> outside) implements Fact {
}
