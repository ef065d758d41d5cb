package bayproof.review;

import bayproof.demand.Outcome;
import bayproof.judge.Judgment;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.read.JobFiles;
import bayproof.read.UnusableInput;
import bayproof.units.Dimension;
import bayproof.units.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What moved from one job to another, over all gates, and which changes of the files moved it. A reason is found by
 * trying: one change alone is taken back in the new job, and made in the old one; where the verdict then moves, the
 * change is a reason. What only several changes together move has no reason of its own.
 *
 * @param moves   what moved
 * @param changes what differs between the files
 * @param tried   how many of the changes, from the first, were tried as reasons
 */
public record Since(List<Move> moves, List<Change> changes, int tried) {
    /** Two jobs that share little are compared without looking for reasons beyond this many changes. */
    private static final int MOST_TRIED = 60;

    public Since {
        moves = List.copyOf(moves);
        changes = List.copyOf(changes);
    }

    /** What moved between two jobs. */
    public static Since of(Evaluation before, Evaluation after) {
        List<Move> moves = moves(before.judgment(), after.judgment());
        List<Change> changes = Change.between(before.files(), after.files());
        int tried = moves.isEmpty() ? 0 : Math.min(changes.size(), MOST_TRIED);
        Map<String, List<Change>> reasons = new TreeMap<>();
        for (Change change : changes.subList(0, tried)) {
            Set<String> moved = new LinkedHashSet<>();
            moved.addAll(moved(change.undone(after.files()), after));
            moved.addAll(moved(change.made(before.files()), before));
            moved.forEach(key -> reasons.computeIfAbsent(key, any -> new ArrayList<>()).add(change));
        }
        return new Since(moves.stream().map(move -> move.because(reasons.getOrDefault(move.key(), List.of()))).toList(), changes, tried);
    }

    /** What is shown of it. */
    public Since narrowed(Focus focus) {
        return new Since(moves.stream().filter(move -> focus.shows(move.rule(), move.subject())).toList(), changes, tried);
    }

    public List<Move> of(Move.Sort sort) {
        return moves.stream().filter(move -> move.sort() == sort).toList();
    }

    /** Keys of what a job says otherwise than another one; nothing where the job cannot be read. */
    private static List<String> moved(JobFiles files, Evaluation than) {
        try {
            return moves(than.judgment(), Evaluation.of(files, than.today()).judgment()).stream().map(Move::key).toList();
        } catch (UnusableInput e) {
            // One half of a change that belongs together, such as a run to an item that is not there: no reason by itself.
            return List.of();
        }
    }

    private static List<Move> moves(Judgment before, Judgment after) {
        Map<String, Verdict> verdictsBefore = verdicts(before);
        Map<String, Verdict> verdictsAfter = verdicts(after);
        Map<String, Judgment.NotApplicable> outsideBefore = outside(before);
        Map<String, Judgment.NotApplicable> outsideAfter = outside(after);
        Set<String> keys = new LinkedHashSet<>(verdictsAfter.keySet());
        keys.addAll(verdictsBefore.keySet());
        List<Move> moves = new ArrayList<>();
        for (String key : keys) {
            Verdict was = verdictsBefore.get(key);
            Verdict is = verdictsAfter.get(key);
            RuleInfo rule = (is == null ? was : is).rule();
            String subject = (is == null ? was : is).subject();
            String wasOutside = reason(outsideBefore.get(key));
            String isOutside = reason(outsideAfter.get(key));
            Move.Sort sort = sort(was, is, wasOutside, isOutside);
            if (sort != null) {
                moves.add(new Move(sort, rule, subject, was, is, wasOutside, isOutside, List.of()));
            }
        }
        moves.sort(Comparator.comparing(Move::sort).thenComparing(move -> move.after() == null ? move.before() : move.after()));
        return moves;
    }

    private static Map<String, Verdict> verdicts(Judgment judgment) {
        Map<String, Verdict> byKey = new TreeMap<>();
        judgment.verdicts().forEach(verdict -> byKey.put(verdict.key(), verdict));
        return byKey;
    }

    private static Map<String, Judgment.NotApplicable> outside(Judgment judgment) {
        Map<String, Judgment.NotApplicable> byKey = new TreeMap<>();
        judgment.notApplicable().stream().filter(one -> one.subject() != null).forEach(one -> byKey.put(Move.key(one), one));
        return byKey;
    }

    private static String reason(Judgment.NotApplicable one) {
        return one == null ? null : one.reason();
    }

    /** How they differ; null where they do not. */
    private static Move.Sort sort(Verdict was, Verdict is, String wasOutside, String isOutside) {
        if (was == null && wasOutside == null) {
            return Move.Sort.NEW;
        }
        if (is == null && isOutside == null) {
            return Move.Sort.GONE;
        }
        int worse = Integer.compare(rank(is), rank(was));
        if (worse == 0 && was != null && is != null && rank(is) > 0) {
            worse = is.weight().compareTo(was.weight());
        }
        if (worse != 0) {
            return worse > 0 ? Move.Sort.WORSE : Move.Sort.BETTER;
        }
        if (was == null || is == null) {
            return Move.Sort.APPLIES;
        }
        return was.weight() != is.weight() || !measured(was).equals(measured(is)) ? Move.Sort.NUMBER : null;
    }

    private static int rank(Verdict verdict) {
        return verdict == null || verdict.outcome() == Outcome.HOLDS ? 0 : verdict.outcome() == Outcome.BROKEN ? 2 : 1;
    }

    /** The value as it is printed: two numbers that read the same did not move. */
    private static String measured(Verdict verdict) {
        Verdict.Measured measured = verdict.measured();
        return measured == null ? "" : measured.word() != null ? measured.word()
                : Units.print(measured.number(), Dimension.ofSymbol(measured.unit()));
    }
}
