package bayproof.vocabulary;

/**
 * A recorded decision to accept a verdict, held against what the rules say today.
 *
 * @param found    whether the job has a verdict of that rule on that subject
 * @param names    the rule and the subject it names
 * @param needed   whether that verdict is broken or unshown
 * @param waivable whether the rule's card lets anybody accept it
 * @param whyNot   the card's reason where it does not; empty where it does
 * @param reason   why it was accepted
 * @param initials who accepted it
 * @param role     in which role
 * @param given    day it was given
 * @param begun    whether that day is not in the future
 * @param lasts    whether its last day is not over
 * @param until    that day
 * @param same     whether value, limit and facts are those it was given on, or better ones
 * @param change   what became otherwise; empty where nothing did
 * @param vouched  whether, where the weight is stop, a second person stands behind it
 * @param signers  why not; empty where it is
 * @param promised whether what is not shown has a gate or day by which it will be measured, and what is broken has none
 * @param promise  that gate or day
 */
public record WaiverClaim(String subject, At at, Shown<Boolean> found, Shown<String> names, Shown<Boolean> needed, Shown<Boolean> waivable,
                          Shown<String> whyNot, Shown<String> reason, Shown<String> initials, Shown<String> role, Shown<String> given,
                          Shown<Boolean> begun, Shown<Boolean> lasts, Shown<String> until, Shown<Boolean> same, Shown<String> change,
                          Shown<Boolean> vouched, Shown<String> signers, Shown<Boolean> promised, Shown<String> promise) implements Fact {
}
