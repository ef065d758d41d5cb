package bayproof.support;

import bayproof.read.JobFiles;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The whole jobs under {@code cases} that cases and sweeps start from. */
public final class Jobs {
    /** Where cases and whole jobs lie, seen from the module that runs the tests. */
    public static final Path CASES = Path.of("..", "cases");
    /** Jobs without any broken or unshown verdict, by folder. */
    public static final List<String> CLEAN = List.of("electric-taxi", "street-show", "station-wagon", "tour-van");

    private static final Map<String, Evaluation> READ = new ConcurrentHashMap<>();

    private Jobs() {
    }

    public static Path plan(String job) {
        return CASES.resolve(job).resolve("plan.yaml");
    }

    /** A job as it stands in its files, read once. */
    public static Evaluation asWritten(String job) {
        return READ.computeIfAbsent(job, name -> {
            try {
                return Evaluation.of(JobFiles.read(plan(name), null));
            } catch (UnusableInput e) {
                throw new AssertionError("the job " + name + " cannot be read:\n" + e.getMessage(), e);
            }
        });
    }
}
