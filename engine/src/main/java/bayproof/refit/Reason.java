package bayproof.refit;

import bayproof.judge.Verdict;
import bayproof.vocabulary.Need;

/**
 * Why a thing of the old job fares as it does: a fact of the two vehicles, a verdict on the new one, or a fact that is missing.
 *
 * @param fate    what this reason alone makes of the thing
 * @param fact    name of the fact, or of the rule
 * @param say     what is so, with its numbers, as a clause
 * @param instead what to do or to have instead, as a clause; null where the reason says it all
 * @param verdict the verdict behind it; null where a fact is
 * @param need    what to find out; null where nothing is missing
 * @param ofOld   whether the same rule breaks on the same thing in the old vehicle
 */
public record Reason(Fate fate, String fact, String say, String instead, Verdict verdict, Need need, boolean ofOld) {

    static Reason fact(Fate fate, String fact, String say, String instead) {
        return new Reason(fate, fact, say, instead, null, null, false);
    }

    static Reason missing(String fact, Need need) {
        return new Reason(Fate.OPEN, fact, need.ask(), null, null, need, false);
    }

    static Reason broken(Fate fate, Verdict verdict, String instead, boolean ofOld) {
        return new Reason(fate, verdict.rule().id(), verdict.because(), instead, verdict, null, ofOld);
    }
}
