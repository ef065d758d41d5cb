package bayproof.read;

import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/**
 * A recorded decision to accept one verdict for a time, as written.
 *
 * @param at where it begins
 */
public record Waiver(String id, String path, At at,
                     @Field(key = "rule", says = "the rule whose verdict is accepted") Shown<String> rule,
                     @Field(key = "subject", says = "the subject of the verdict, such as runs.feed-1") Shown<String> subject,
                     @Field(key = "measured", says = "the value that is accepted, as it was printed") Shown<String> measured,
                     @Field(key = "limit", says = "the limit it was held against, as it was printed") Shown<String> limit,
                     @Field(key = "facts", says = "mark of the facts it was given on; why RULE --in PLAN prints it") Shown<String> facts,
                     @Field(key = "reason", says = "why it is accepted") Shown<String> reason,
                     @Field(key = "by", says = "who accepts it") Person by,
                     @Field(key = "second", says = "a second person, needed where the weight is stop") Person second,
                     @Field(key = "date", says = "day it was given, year-month-day") Shown<String> date,
                     @Field(key = "until", says = "last day on which it holds, year-month-day") Shown<String> until,
                     @Field(key = "measured-by", says = "of what is not shown: the gate or the day by which it will be measured")
                     Shown<String> measuredBy) {

    /** Somebody who answers for a decision. */
    public record Person(String path, At at,
                         @Field(key = "initials", says = "initials of who decides") Shown<String> initials,
                         @Field(key = "role", says = "role of who decides, such as lead or owner") Shown<String> role) {
    }
}
