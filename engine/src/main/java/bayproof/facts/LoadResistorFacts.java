package bayproof.facts;

import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.solve.Sums;
import bayproof.solve.sound.Levels;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.LoadResistor;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.function.Consumer;

/** Facts about resistors that stand in for speakers: their heat, and whether the radio takes them for one. */
final class LoadResistorFacts {
    private final Model model;
    private final Amplifiers amplifiers;

    LoadResistorFacts(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
    }

    void collect(Consumer<Fact> facts) {
        for (Item.LoadResistor resistor : model.job.itemsOf(Item.LoadResistor.class)) {
            Shown<Plan.Wiring> wiring = wiring(resistor);
            facts.accept(new LoadResistor(resistor.path(), resistor.at(), strength(resistor, wiring), wiring.map(one -> model.factoryOutput(one) != null),
                    off(resistor, wiring), resistor.sitsOn()));
        }
    }

    private Shown<Plan.Wiring> wiring(Item.LoadResistor resistor) {
        for (Plan.Wiring wiring : model.job.plan().speakerWiring().values()) {
            String net = wiring.net().orElse(null);
            if (net != null && CoilNet.parse(net).coils().contains(resistor.id() + ".ends")) {
                return Shown.of(wiring);
            }
        }
        return Shown.missing(new Need("speaker-wiring", "the output that " + resistor.id() + " hangs on", resistor.at()));
    }

    /** Its rating over the heat of the output's greatest clean volts, as if all of them stood across it. */
    private Shown<Double> strength(Item.LoadResistor resistor, Shown<Plan.Wiring> wiring) {
        Shown<Double> heat = wiring.then(this::volts).with(resistor.ohms(), Levels::watts);
        if (heat.isGiven()) {
            model.numbers.put(resistor.path() + ".heat", heat.orElse(0.0), Dimension.POWER, () -> "volts of the output squared / "
                    + Model.print(resistor.ohms().orElse(0.0), Dimension.RESISTANCE));
        }
        return resistor.ratedWatts().with(heat, (rated, watts) -> new double[] {rated, watts}).then(pair -> Shown.of(Sums.share(pair[0], pair[1]),
                () -> Model.print(pair[0], Dimension.POWER) + " / " + Model.print(pair[1], Dimension.POWER)));
    }

    private Shown<Double> volts(Plan.Wiring wiring) {
        Vehicle.Output output = model.factoryOutput(wiring);
        return output != null ? output.audio().loud().midVolts()
                : Amplifiers.fullVolts((Item.Amplifier) model.job.itemOf(wiring.id()), Amplifiers.isBridged(wiring));
    }

    /** How far the load on its output lies from what the radio looks for, either way. */
    private Shown<Double> off(Item.LoadResistor resistor, Shown<Plan.Wiring> wiring) {
        Shown<Double> off = wiring.then(one -> model.factoryOutput(one) == null ? Shown.of(0.0)
                : amplifiers.loadOhms(one).with(model.factoryOutput(one).audio().expectedLoadOhms(), (load, wanted) -> new double[] {load, wanted}).then(pair ->
                Shown.of(Math.abs(Sums.share(pair[0], pair[1]) - 1), () -> Model.print(pair[0], Dimension.RESISTANCE) + " for "
                        + Model.print(pair[1], Dimension.RESISTANCE))));
        if (off instanceof Shown.Given<Double> given) {
            model.numbers.put(resistor.path() + ".off", given.value(), Dimension.RATIO, given.calculation());
        }
        return off;
    }
}
