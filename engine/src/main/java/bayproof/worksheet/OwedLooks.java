package bayproof.worksheet;

import bayproof.judge.Judgment;
import bayproof.read.Inspection;
import bayproof.read.InspectionList;
import bayproof.read.InspectionList.Point;
import bayproof.review.Evaluation;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The looks that a job owes, those of the vehicle before those of the work; what does not apply to the job is left out. */
public final class OwedLooks {
    /**
     * One look.
     *
     * @param done what is written of it; null where nothing is
     */
    public record Look(Point point, Inspection done) {
    }

    private OwedLooks() {
    }

    /** The looks of a job that was judged. */
    public static List<Look> of(Evaluation evaluation) {
        Judgment judgment = evaluation.judgment();
        Set<String> due = judgment.verdicts().stream().map(verdict -> verdict.rule().id()).collect(Collectors.toSet());
        List<Look> looks = new ArrayList<>();
        for (boolean after : new boolean[] {false, true}) {
            InspectionList.points().values().stream().filter(point -> point.afterWork() == after && due.contains(point.id()))
                    .forEach(point -> looks.add(new Look(point, evaluation.job().plan().inspections().get(point.id()))));
        }
        return List.copyOf(looks);
    }
}
