package bayproof.worksheet;

import bayproof.facts.FactBook;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.solve.sound.Levels;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.GainSetting;
import bayproof.vocabulary.MeteredOutput;
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
     * @param meter       what an ohmmeter must read at the amplifier's end; null where no fact says it
     * @param gain        what the gain is set to; null where no fact says it
     */
    public record Line(String output, Shown<String> net, Shown<Double> loadOhms, Shown<Double> minimumOhms, int coils,
                       Shown<Double> ratedWatts, Shown<Double> ratedOhms, MeteredOutput meter, GainSetting gain) {
        /** AC volts of so many watts in its nominal load. */
        public Shown<Double> voltsOf(double watts) {
            return loadOhms.map(ohms -> Levels.targetVolts(watts, ohms));
        }
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
                        wiring.net().map(text -> CoilNet.parse(text).coils().size()).orElse(0), amplifier.ratedWatts(), amplifier.ratedLoadOhms(),
                        of(facts, MeteredOutput.class, wiring.path()), of(facts, GainSetting.class, "settings." + wiring.id())));
            }
        }
        return lines;
    }

    private static <T extends Fact> T of(FactBook facts, Class<T> kind, String subject) {
        return facts.facts().stream().filter(kind::isInstance).map(kind::cast).filter(fact -> fact.subject().equals(subject)).findFirst().orElse(null);
    }

    private static Plan.Wiring wiring(Job job, String subject) {
        return job.plan().speakerWiring().values().stream().filter(wiring -> wiring.path().equals(subject)).findFirst().orElse(null);
    }
}
