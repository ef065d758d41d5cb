package bayproof.facts;

import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.solve.sound.Draw;
import bayproof.solve.sound.Levels;
import bayproof.solve.sound.SpeakerLoads;
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
    private final SpeakerNets nets;
    private final Map<String, Shown<Double>> outputs = new ConcurrentHashMap<>();

    Amplifiers(Model model) {
        this.model = model;
        this.nets = new SpeakerNets(model);
    }

    /** Wiring entries of one amplifier, in the order of the plan. */
    List<Plan.Wiring> outputsOf(Item.Amplifier amplifier) {
        return model.job.plan().speakerWiring().values().stream()
                .filter(wiring -> wiring.id().startsWith(amplifier.id() + ".")).toList();
    }

    static boolean isBridged(Plan.Wiring wiring) {
        return wiring.id().substring(wiring.id().indexOf('.') + 1).startsWith("bridged-");
    }

    /**
     * Load of a net of voice coils for its amplifier: the nominal one, or the least over the audible range where a capacitor makes it fall.
     */
    Shown<Double> loadOhms(Plan.Wiring wiring) {
        return wiring.net().then(text -> nets.nominal(CoilNet.parse(text)).then(net -> {
            double ohms = SpeakerLoads.leastOhms(net);
            return Shown.of(ohms, () -> text + " = " + Model.print(ohms, Dimension.RESISTANCE)
                    + (net.ohmsAt(SpeakerLoads.LOWEST_HERTZ) > ohms * (1 + 1e-6) ? ", the least from 20 Hz to 20 kHz" : ""));
        }));
    }

    SpeakerNets nets() {
        return nets;
    }

    /** Volts of one output at its rated power; a bridged pair has twice those of one channel. */
    static Shown<Double> fullVolts(Item.Amplifier amplifier, boolean bridged) {
        return amplifier.ratedWatts().with(amplifier.ratedLoadOhms(), (watts, ohms) -> Levels.fullVolts(watts, ohms, bridged)).then(volts -> Shown.of(volts,
                () -> "sqrt(" + Model.print(amplifier.ratedWatts().orElse(0.0), Dimension.POWER) + " x "
                        + Model.print(amplifier.ratedLoadOhms().orElse(0.0), Dimension.RESISTANCE) + ")" + (bridged ? " x 2, bridged" : "")));
    }

    /** Whether an amplifier's power follows its supply volts; one that does not say so holds it, which draws the more. */
    static boolean isUnregulated(Item.Amplifier amplifier) {
        return amplifier.input().regulated().orElse("yes").equals("no");
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
        return share == 0 ? 0 : Draw.supplyWatts(output * share, Draw.efficiency(outputClass.equals("D"), efficiency, share));
    }
}
