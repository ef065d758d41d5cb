package bayproof.refit;

import bayproof.demand.Outcome;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.review.Evaluation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Verdicts that the new vehicle changes, each on the same thing under its new name, and the faults that the old job has in itself.
 *
 * @param worse   held in the old vehicle and is broken or not shown in the new one
 * @param better  was broken or not shown and holds in the new one
 * @param outside held or not, and does not apply in the new vehicle any more
 * @param faults  broken in the old vehicle
 */
public record Moved(List<Move> worse, List<Move> better, List<Outside> outside, List<Verdict> faults) {

    /** One verdict in both vehicles. */
    public record Move(Verdict before, Verdict after) {
    }

    /**
     * A rule that no longer applies.
     *
     * @param subjects things of the old job that it spoke of
     * @param reason   why it does not apply
     */
    public record Outside(RuleInfo rule, List<String> subjects, String reason) {
        public Outside {
            subjects = List.copyOf(subjects);
        }
    }

    public Moved {
        worse = List.copyOf(worse);
        better = List.copyOf(better);
        outside = List.copyOf(outside);
        faults = List.copyOf(faults);
    }

    static Moved of(Evaluation before, Evaluation after, Facts facts) {
        Map<String, Verdict> now = new TreeMap<>();
        after.judgment().verdicts().forEach(verdict -> now.put(verdict.key(), verdict));
        Map<String, String> out = new TreeMap<>();
        after.judgment().notApplicable().forEach(one -> out.put(one.rule().id() + " " + one.subject(), one.reason()));
        List<Move> worse = new ArrayList<>();
        List<Move> better = new ArrayList<>();
        Map<String, List<Verdict>> gone = new TreeMap<>();
        for (Verdict was : before.judgment().verdicts()) {
            String key = was.rule().id() + " " + facts.renamed(was.subject());
            Verdict is = now.get(key);
            String lacks = facts.lacks(was.subject());
            if (is == null || lacks != null) {
                // What stays behind for want of a place has nothing that a rule could speak of here.
                gone.computeIfAbsent(was.rule().id() + "\n" + (lacks == null ? reason(out, was, key) : lacks), any -> new ArrayList<>()).add(was);
            } else if (was.outcome() == Outcome.HOLDS && is.outcome() != Outcome.HOLDS && Rows.counts(is)) {
                worse.add(new Move(was, is));
            } else if (was.outcome() != Outcome.HOLDS && is.outcome() == Outcome.HOLDS) {
                better.add(new Move(was, is));
            }
        }
        List<Outside> outside = gone.entrySet().stream().map(entry -> new Outside(entry.getValue().get(0).rule(),
                entry.getValue().stream().map(Verdict::subject).toList(), entry.getKey().substring(entry.getKey().indexOf('\n') + 1))).toList();
        return new Moved(worse, better, outside, before.judgment().of(Outcome.BROKEN));
    }

    private static String reason(Map<String, String> out, Verdict was, String key) {
        String reason = out.getOrDefault(key, out.get(was.rule().id() + " null"));
        return reason == null ? "it belongs to the old vehicle" : reason;
    }
}
