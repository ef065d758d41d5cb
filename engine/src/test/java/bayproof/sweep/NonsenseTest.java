package bayproof.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.JobFiles;
import bayproof.read.Problem;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import bayproof.vocabulary.At;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.LongAdder;
import org.junit.jupiter.api.Test;

/** Whatever stands in a file, the job is judged or refused with the place of each mistake; nothing else happens. */
class NonsenseTest {
    /** Each value of this job stands for each kind of nonsense. */
    private static final String TRIED_WHOLE = "street-show";
    /** A value of another job stands for so many kinds of nonsense, in turn: what it adds are fields that the first one lacks. */
    private static final int IN_TURN = 1;

    private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
    private final LongAdder tried = new LongAdder();
    private final LongAdder refused = new LongAdder();

    /** One value of a job and what is written in its place. */
    private record Trial(JobFiles files, TreeSet<String> names, Spot spot, Tree nonsense) {
    }

    @Test
    void nonsenseAnywhereIsJudgedOrRefusedWithItsPlace() throws UnusableInput {
        List<Trial> trials = new ArrayList<>();
        Jobs.CLEAN.forEach(job -> trials.addAll(trials(Jobs.asWritten(job).files(), !job.equals(TRIED_WHOLE))));
        trials.addAll(trials(JobFiles.read(Path.of("../cases/published/two-wire-run/plan.yaml"), null), false));
        trials.parallelStream().forEach(this::check);
        Tally.count("nonsense values", tried.sum());
        assertTrue(refused.sum() > 0 && refused.sum() < tried.sum(), refused + " of " + tried + " refused");
        assertEquals(List.of(), wrong.stream().sorted().toList());
    }

    private static List<Trial> trials(JobFiles files, boolean inTurn) {
        List<Trial> trials = new ArrayList<>();
        TreeSet<String> names = new TreeSet<>();
        JobFiles.KINDS.forEach(kind -> names(files.tree(kind), names));
        int next = 0;
        for (String kind : JobFiles.KINDS) {
            for (Spot spot : Spot.all(files, kind)) {
                List<Tree> nonsense = nonsense(spot.in(files).at());
                for (int i = 0; i < (inTurn ? IN_TURN : nonsense.size()); i++) {
                    trials.add(new Trial(files, names, spot, nonsense.get(next++ % nonsense.size())));
                }
            }
        }
        return trials;
    }

    private static List<Tree> nonsense(At at) {
        Tree word = new ScalarTree("nonsense", false, at);
        return List.of(word, new ScalarTree("", false, at), new ScalarTree("", true, at), new ScalarTree("unknown", false, at),
                new ScalarTree("cannot-be-seen", false, at), new ScalarTree("-1 m", false, at), new ScalarTree("0 A", false, at),
                new ScalarTree("a.b.c", false, at), new ScalarTree(".", false, at), new ScalarTree("| + (", false, at),
                new ListTree(List.of(), at), new ListTree(List.of(word, new ListTree(List.of(word), at)), at), new MapTree(Map.of(), at),
                new MapTree(Map.of("nonsense", new Entry("nonsense", at, word)), at),
                new MapTree(Map.of("", new Entry("", at, new MapTree(Map.of(), at))), at));
    }

    private static void names(Tree tree, TreeSet<String> names) {
        names.add(tree.at().file());
        if (tree instanceof MapTree map) {
            map.entries().values().forEach(entry -> names(entry.value(), names));
        } else if (tree instanceof ListTree list) {
            list.items().forEach(item -> names(item, names));
        }
    }

    private void check(Trial trial) {
        tried.increment();
        try {
            Evaluation.of(trial.spot.holding(trial.files, trial.nonsense));
        } catch (UnusableInput e) {
            refused.increment();
            for (Problem problem : e.problems()) {
                if (!trial.names.contains(problem.at().file()) || problem.at().line() < 1 || problem.at().column() < 1 || problem.what().isBlank()) {
                    wrong.add(trial.spot + " as " + trial.nonsense + ": " + problem);
                }
            }
        } catch (RuntimeException | StackOverflowError e) {
            wrong.add(trial.spot + " as " + trial.nonsense + ": " + e + " at " + e.getStackTrace()[0]);
        }
    }
}
