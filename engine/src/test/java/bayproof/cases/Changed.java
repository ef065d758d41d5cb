package bayproof.cases;

import bayproof.review.Evaluation;
import java.util.List;

/**
 * The job of a case after its change.
 *
 * @param title the case
 */
public record Changed(String title, Evaluation evaluation) {
    /** Every job that the cases make, for sweeps. */
    public static List<Changed> all() {
        return CaseFile.all().stream().flatMap(file -> file.cases().stream()
                .map(one -> new Changed(file.rule() + ": " + one.title(), Trial.of(one).after()))).toList();
    }
}
