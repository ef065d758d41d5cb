package bayproof.worksheet;

import bayproof.facts.FactBook;
import bayproof.facts.Numbers;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a loud programme gives one speaker on one output.
 *
 * @param output         amplifier and output
 * @param speaker        the speaker
 * @param fromHertz      corner of the high-passes; null where there is none
 * @param toHertz        corner of the low-passes; null where there is none
 * @param programmeShare what the band lets through of a programme's power; null where a filter is not known
 * @param watts          what reaches the speaker of a loud programme; null where that is not known
 * @param ratedWatts     what it is rated for
 */
public record BandPower(String output, String speaker, Double fromHertz, Double toHertz, Double programmeShare, Double watts, Shown<Double> ratedWatts) {

    static List<BandPower> of(Job job, FactBook facts) {
        List<BandPower> all = new ArrayList<>();
        for (Plan.Wiring wiring : job.plan().speakerWiring().values()) {
            String setting = "settings." + wiring.id() + ".";
            Set<String> on = new LinkedHashSet<>();
            wiring.net().map(text -> on.addAll(CoilNet.parse(text).coils().stream().map(coil -> coil.substring(0, coil.indexOf('.'))).toList()));
            for (String id : on) {
                if (job.itemOf(wiring.id()) instanceof Item.Amplifier && job.items().get(id) instanceof Item.Speaker speaker) {
                    all.add(new BandPower(wiring.id(), id, number(facts, setting + "band-from"), number(facts, setting + "band-to"), number(facts, setting + "programme-share"),
                            number(facts, speaker.path() + ".programme-power"), speaker.data().ratedWatts()));
                }
            }
        }
        return all;
    }

    private static Double number(FactBook facts, String path) {
        Numbers.Figure figure = facts.numbers().all().get(path);
        return figure == null ? null : Double.valueOf(figure.value());
    }
}
