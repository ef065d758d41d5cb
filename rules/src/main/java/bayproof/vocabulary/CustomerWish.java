package bayproof.vocabulary;

/**
 * One wish of the customer.
 *
 * @param want      the wish in the customer's words
 * @param wanted    whether anything is wished
 * @param checkedBy what checks it: a rule, a reading or a signature
 * @param with      the rule, the instrument or the person
 * @param bound     whether that can check it
 * @param kept      what became of it
 */
public record CustomerWish(String subject, At at, Shown<String> want, Shown<Boolean> wanted, Shown<String> checkedBy, Shown<String> with,
                           Shown<Boolean> bound, Shown<String> kept) implements Fact {
}
