package bayproof.facts;

import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.units.Dimension;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What hangs on each amplifier output, and what the amplifier then delivers and draws. */
final class Amplifiers {
    private final Model model;
    private final Map<String, Shown<Double>> outputs = new ConcurrentHashMap<>();

    Amplifiers(Model model) {
        this.model = model;
    }

    /** Wiring entries of one amplifier, in the order of the plan. */
    List<Plan.Wiring> outputsOf(Item.Amplifier amplifier) {
        return model.job.plan().speakerWiring().values().stream()
                .filter(wiring -> wiring.id().startsWith(amplifier.id() + ".")).toList();
    }

    static boolean isBridged(Plan.Wiring wiring) {
        return wiring.id().substring(wiring.id().indexOf('.') + 1).startsWith("bridged-");
    }

    /** Nominal load of a net of voice coils. */
    Shown<Double> loadOhms(Plan.Wiring wiring) {
        return wiring.net().then(text -> {
            CoilNet net = CoilNet.parse(text);
            Shown<Double> load = ohms(net);
            return load.then(ohms -> Shown.of(ohms, () -> text + " = " + Model.print(ohms, Dimension.RESISTANCE)));
        });
    }

    private Shown<Double> ohms(CoilNet net) {
        if (net instanceof CoilNet.Coil coil) {
            Item item = model.job.itemOf(coil.terminal());
            String name = coil.terminal().substring(coil.terminal().indexOf('.') + 1);
            return item instanceof Item.Speaker speaker && speaker.coils().containsKey(name) ? speaker.coils().get(name)
                    : Shown.missing(new Need("items", "the speaker of " + coil.terminal(), model.job.planAt()));
        }
        boolean series = net instanceof CoilNet.Series;
        List<CoilNet> members = net instanceof CoilNet.Series each ? each.members() : ((CoilNet.Parallel) net).members();
        Shown<Double> sum = Shown.of(0.0);
        for (CoilNet member : members) {
            sum = sum.with(ohms(member), (before, ohms) -> before + (series ? ohms : 1 / ohms));
        }
        return sum.map(total -> series ? total : 1 / total);
    }

    /**
     * Output into the planned loads at full sine: an output stage holds its volts, so the power goes with one over the
     * load, and a bridged pair has twice the volts of one channel.
     */
    Shown<Double> outputWatts(Item.Amplifier amplifier) {
        return outputs.computeIfAbsent(amplifier.id(), id -> workOutWatts(amplifier));
    }

    private Shown<Double> workOutWatts(Item.Amplifier amplifier) {
        List<Plan.Wiring> outputs = outputsOf(amplifier);
        if (outputs.isEmpty()) {
            return Shown.missing(new Need("speaker-wiring", "what hangs on the outputs of " + amplifier.id(), amplifier.at()));
        }
        Shown<Double> sum = Shown.of(0.0);
        List<String> terms = new ArrayList<>();
        for (Plan.Wiring wiring : outputs) {
            double bridge = isBridged(wiring) ? 4 : 1;
            Shown<Double> watts = amplifier.ratedWatts().with(amplifier.ratedLoadOhms(), (rated, load) -> rated * load * bridge)
                    .with(loadOhms(wiring), (product, load) -> product / load);
            sum = sum.with(watts, Double::sum);
            terms.add(wiring.id().substring(wiring.id().indexOf('.') + 1));
        }
        return sum.then(total -> Shown.of(total, () -> "rated output x rated load / planned load, over " + String.join(", ", terms)));
    }

    /**
     * Supply power for a share of full-sine output, idle draw apart. A class D stage keeps its efficiency, that of a
     * class AB stage goes with the square root of the share (both stages ideal, from textbooks; idle draw is added).
     */
    double supplyWatts(Item.Amplifier amplifier, double share, Corner corner) {
        double output = corner.given(outputWatts(amplifier));
        String outputClass = corner.givenOrNull(amplifier.outputClass());
        if (outputClass == null) {
            return Double.NaN;
        }
        double efficiency = corner.orWindow(amplifier.efficiency(), outputClass.equals("D") ? "efficiency-class-d" : "efficiency-class-ab");
        return output * (outputClass.equals("D") ? share : Math.sqrt(share)) / efficiency;
    }
}
