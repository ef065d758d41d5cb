package bayproof.review;

import bayproof.demand.Demand;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.MergePatch;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.UnusableInput;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Knob;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Finds for each broken verdict the planned value nearest to the present one that makes its rule hold, by trying: a
 * value counts when the rule then holds and nothing else gets worse. Remedies are said, never applied.
 */
public final class Remedies {
    private final Evaluation planned;
    private final Map<String, Verdict> before = new TreeMap<>();

    private Remedies(Evaluation planned) {
        this.planned = planned;
        planned.judgment().verdicts().forEach(verdict -> before.put(verdict.key(), verdict));
    }

    /** A remedy for each broken verdict that has a way to put it right, by {@link Verdict#key()}. */
    public static Map<String, Remedy> of(Evaluation planned) {
        return of(planned, planned.judgment().of(Outcome.BROKEN));
    }

    /** The same for some of the broken verdicts: a remedy takes as long as many evaluations. */
    public static Map<String, Remedy> of(Evaluation planned, List<Verdict> broken) {
        Remedies remedies = new Remedies(planned);
        Map<String, Remedy> found = new TreeMap<>();
        for (Verdict verdict : broken) {
            Remedy remedy = remedies.forVerdict(verdict);
            if (remedy != null) {
                found.put(verdict.key(), remedy);
            }
        }
        return found;
    }

    private Remedy forVerdict(Verdict verdict) {
        for (Demand.Way way : verdict.ways()) {
            if (way.knob() == null) {
                return way.say().contains("{value}") ? null : new Remedy(filled(way.say(), verdict, ""), null, null);
            }
            String value = nearest(verdict, way.knob());
            if (value != null) {
                return new Remedy(filled(way.say(), verdict, value), way.knob(), value);
            }
        }
        return null;
    }

    /** The first value of the ladder with which the verdict holds; ladders run from bad to good, so halving finds it. */
    private String nearest(Verdict verdict, Knob knob) {
        List<String> ladder = knob.ladder();
        int low = 0;
        int high = ladder.size() - 1;
        int found = -1;
        while (low <= high) {
            int middle = (low + high) / 2;
            if (holds(verdict, knob, ladder.get(middle))) {
                found = middle;
                high = middle - 1;
            } else {
                low = middle + 1;
            }
        }
        return found >= 0 && spares(verdict, knob, ladder.get(found)) ? ladder.get(found) : null;
    }

    private boolean holds(Verdict verdict, Knob knob, String value) {
        Evaluation changed = with(knob, value);
        return changed != null && changed.judgment().verdicts().stream()
                .anyMatch(one -> one.key().equals(verdict.key()) && one.outcome() == Outcome.HOLDS);
    }

    /** Whether nothing else gets worse. */
    private boolean spares(Verdict mended, Knob knob, String value) {
        Evaluation changed = with(knob, value);
        for (Verdict after : changed.judgment().verdicts()) {
            Verdict was = before.get(after.key());
            if (!after.key().equals(mended.key()) && after.outcome() != Outcome.HOLDS
                    && (was == null || rank(was.outcome()) < rank(after.outcome())
                    || was.outcome() == Outcome.BROKEN && after.outcome() == Outcome.BROKEN && after.weight().compareTo(was.weight()) > 0)) {
                return false;
            }
        }
        return true;
    }

    private static int rank(Outcome outcome) {
        return outcome == Outcome.BROKEN ? 2 : outcome == Outcome.UNSHOWN ? 1 : 0;
    }

    private Evaluation with(Knob knob, String value) {
        try {
            return Evaluation.of(planned.files().patched(patch(knob, value, planned.job().planAt())), planned.today());
        } catch (UnusableInput e) {
            return null;
        }
    }

    /** The change as a merge patch over the files of a job. */
    public static MapTree patch(Knob knob, String value, At at) {
        MapTree patch = set(knob.path(), value, at);
        for (List<String> path : knob.along()) {
            patch = MergePatch.apply(patch, set(path, value, at));
        }
        return new MapTree(Map.of(knob.file(), new Entry(knob.file(), at, patch)), at);
    }

    private static MapTree set(List<String> path, String value, At at) {
        Tree tree = new ScalarTree(value, true, at);
        for (int i = path.size() - 1; i >= 0; i--) {
            tree = new MapTree(Map.of(path.get(i), new Entry(path.get(i), at, tree)), at);
        }
        return (MapTree) tree;
    }

    private static String filled(String say, Verdict verdict, String value) {
        String limit = verdict.limit() == null || Double.isNaN(verdict.limit().value()) ? ""
                : Units.print(verdict.limit().value(), Dimension.ofSymbol(verdict.limit().limit().unit()));
        String measured = verdict.measured() == null ? "" : verdict.measured().word() != null ? verdict.measured().word()
                : Units.print(verdict.measured().number(), Dimension.ofSymbol(verdict.measured().unit()));
        return say.replace("{value}", Units.alsoIn(value)).replace("{limit}", limit).replace("{measured}", measured)
                .replace(" (now )", "");
    }
}
