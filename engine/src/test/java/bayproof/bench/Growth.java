package bayproof.bench;

import bayproof.facts.FactBook;
import bayproof.judge.Court;
import bayproof.judge.Judgment;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.support.Jobs;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/**
 * Measures how warm judging (facts and rules) grows with the number of runs, in processor time of its thread, and prints
 * the exponent from each size to the next. After the build, in the folder {@code engine}:
 *
 * <pre>
 * java -cp "target/test-classes:target/classes:target/lib/*" bayproof.bench.Growth
 * </pre>
 */
final class Growth {
    private static final int ROUNDS = 15;
    private static final long LEAST_NANOS = 400_000_000L;

    private Growth() {
    }

    public static void main(String[] arguments) throws Exception {
        JobFiles van = JobFiles.read(Jobs.plan("tour-van"), null);
        double runsBefore = 0;
        double timeBefore = 0;
        for (int copies : new int[] {1, 2, 4, 8}) {
            Job job = JobReader.bind(LargerVan.of(van, copies));
            int runs = job.plan().runs().size();
            double millis = millis(job);
            System.out.printf(Locale.ROOT, "%d runs, %d items, %d facts: %.2f ms", runs, job.items().size(), FactBook.of(job).facts().size(), millis);
            System.out.println(copies == 1 ? "" : String.format(Locale.ROOT, ", exponent %.2f", Math.log(millis / timeBefore) / Math.log(runs / runsBefore)));
            runsBefore = runs;
            timeBefore = millis;
        }
    }

    /** The median of the later rounds. */
    private static double millis(Job job) {
        double[] rounds = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            int calls = 0;
            long spent;
            do {
                Judgment judgment = Court.judge(FactBook.of(job), job.limits());
                if (judgment.verdicts().isEmpty()) {
                    throw new IllegalStateException("nothing was judged");
                }
                calls++;
                spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
            } while (spent < LEAST_NANOS);
            rounds[round] = spent / 1e6 / calls;
        }
        double[] later = Arrays.copyOfRange(rounds, ROUNDS / 2, ROUNDS);
        Arrays.sort(later);
        return later[later.length / 2];
    }
}
