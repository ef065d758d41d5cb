package bayproof.worksheet;

import bayproof.facts.FactBook;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.OutputLoad;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;

/** What hangs on the outputs of the amplifiers. */
public final class SpeakerLines {
    /**
     * One output.
     *
     * @param output      amplifier and output
     * @param net         voice coils on it
     * @param loadOhms    nominal load
     * @param minimumOhms least rated load of the output as it is used
     * @param coils       number of voice coils; 0 where no net is written
     * @param ratedWatts  rated output into the rated load
     * @param ratedOhms   load at which the output is rated
     */
    public record Line(String output, Shown<String> net, Shown<Double> loadOhms, Shown<Double> minimumOhms, int coils,
                       Shown<Double> ratedWatts, Shown<Double> ratedOhms) {
    }

    private SpeakerLines() {
    }

    static List<Line> of(Job job, FactBook facts) {
        List<Line> lines = new ArrayList<>();
        for (Fact fact : facts.facts()) {
            if (fact instanceof OutputLoad load && wiring(job, load.subject()) != null) {
                Plan.Wiring wiring = wiring(job, load.subject());
                Item.Amplifier amplifier = (Item.Amplifier) job.itemOf(wiring.id());
                lines.add(new Line(wiring.id(), wiring.net(), load.loadOhms(), load.minimumOhms(),
                        wiring.net().map(text -> CoilNet.parse(text).coils().size()).orElse(0), amplifier.ratedWatts(), amplifier.ratedLoadOhms()));
            }
        }
        return lines;
    }

    private static Plan.Wiring wiring(Job job, String subject) {
        return job.plan().speakerWiring().values().stream().filter(wiring -> wiring.path().equals(subject)).findFirst().orElse(null);
    }
}
