package bayproof.cases;

import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The job of a case after its change.
 *
 * @param title the case
 */
public record Changed(String title, Evaluation evaluation) {
    /** Every job that the cases make, for sweeps: each is judged when its turn comes and forgotten after, since all at once fill a heap. */
    public static Stream<Changed> all() {
        List<Supplier<Changed>> turns = CaseFile.all().stream().flatMap(file -> file.cases().stream()
                .<Supplier<Changed>>map(one -> () -> new Changed(file.rule() + ": " + one.title(), Trial.of(one).after()))).toList();
        return turns.parallelStream().map(Supplier::get);
    }

    /** The clean jobs, and every job that the cases make of them. */
    public static Stream<Changed> withClean() {
        return Stream.concat(Jobs.CLEAN.stream().map(job -> new Changed(job, Jobs.asWritten(job))), all());
    }
}
