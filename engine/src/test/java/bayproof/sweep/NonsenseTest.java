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
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Whatever stands in a file, the job is judged or refused with the place of each mistake; nothing else happens. */
class NonsenseTest {
    private final List<String> wrong = new ArrayList<>();
    private int tried;
    private int refused;

    @Test
    void nonsenseAnywhereIsJudgedOrRefusedWithItsPlace() throws UnusableInput {
        List<JobFiles> jobs = new ArrayList<>(Jobs.SWEPT.stream().map(job -> Jobs.asWritten(job).files()).toList());
        jobs.add(JobFiles.read(Path.of("../cases/published/two-wire-run/plan.yaml"), null));
        for (JobFiles files : jobs) {
            TreeSet<String> names = new TreeSet<>();
            JobFiles.KINDS.forEach(kind -> names(files.tree(kind), names));
            for (String kind : JobFiles.KINDS) {
                for (Spot spot : Spot.all(files, kind)) {
                    for (Tree nonsense : nonsense(spot.in(files).at())) {
                        check(spot, spot.holding(files, nonsense), nonsense, names);
                    }
                }
            }
        }
        Tally.count("nonsense values", tried);
        assertTrue(refused > 0 && refused < tried, refused + " of " + tried + " refused");
        assertEquals(List.of(), wrong);
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

    private void check(Spot spot, JobFiles files, Tree nonsense, TreeSet<String> names) {
        tried++;
        try {
            Evaluation.of(files);
        } catch (UnusableInput e) {
            refused++;
            for (Problem problem : e.problems()) {
                if (!names.contains(problem.at().file()) || problem.at().line() < 1 || problem.at().column() < 1 || problem.what().isBlank()) {
                    wrong.add(spot + " as " + nonsense + ": " + problem);
                }
            }
        } catch (RuntimeException | StackOverflowError e) {
            wrong.add(spot + " as " + nonsense + ": " + e + " at " + e.getStackTrace()[0]);
        }
    }
}
