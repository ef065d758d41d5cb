package bayproof.worksheet;

import bayproof.facts.BoxNeighbors;
import bayproof.facts.FuseStation;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.review.Evaluation;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Everything that a bench sheet is made of: numbers to build and set by, each a fact of the job or not there.
 *
 * @param job       the job
 * @param clearance how far the rules let the work go
 * @param cuts      cables to cut
 * @param fuses     fuses, from the posts outward
 * @param grounds   where the returns meet
 * @param connectors pins of the vehicle's connectors
 * @param speakers  what hangs on the amplifiers
 * @param bands    what a loud programme gives each speaker
 * @param boxes    how each enclosure answers to its volume
 * @param sources   what the channels of the factory system give at both volume steps
 * @param hours     hours of the steps
 */
public record Worksheet(Job job, Clearance clearance, CutList cuts, List<FuseStation> fuses, List<Grounds.Ground> grounds,
                        List<PinForms.Connector> connectors, List<SpeakerLines.Line> speakers, List<BandPower> bands,
                        List<BoxNeighbors.Neighbor> boxes, List<SourceLevel> sources, WorkHours hours) {

    /** The sheet of a job that was judged. */
    public static Worksheet of(Evaluation evaluation, Clearance clearance) {
        Job job = evaluation.job();
        List<FuseStation> fuses = FuseStation.of(job);
        // What lies before the first fuse of a battery: its length is judged.
        Set<String> first = job.runs().values().stream().filter(run -> !job.isFactory(run))
                .filter(run -> fuses.stream().anyMatch(fuse -> fuse.fusesBefore() == 0 && fuse.post() != null && job.itemOf(fuse.post()) instanceof Item.Battery
                        && joins(run.from().orElse(""), run.to().orElse(""), fuse.post(), fuse.liveSide())))
                .map(run -> run.id()).collect(Collectors.toSet());
        return new Worksheet(job, clearance, CutList.of(job, first), fuses, Grounds.of(job), PinForms.of(job),
                SpeakerLines.of(job, evaluation.facts()), BandPower.of(job, evaluation.facts()), BoxNeighbors.of(job), SourceLevel.of(job), WorkHours.of(job));
    }

    private static boolean joins(String from, String to, String one, String other) {
        return from.equals(one) && to.equals(other) || from.equals(other) && to.equals(one);
    }
}
