package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FedItem;
import bayproof.vocabulary.FeedOutput;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about where the current of each thing is taken from, and what hangs on the vehicle's own feeds. */
final class FeedSourceFacts {
    private final Model model;
    private final Amplifiers amplifiers;
    private final Sides sides;

    FeedSourceFacts(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
        this.sides = new Sides(model);
    }

    void collect(Consumer<Fact> facts) {
        for (Item item : model.job.items().values()) {
            if (item instanceof Item.Powered || item instanceof Item.Converter) {
                facts.accept(new FedItem(item.path(), item.at(), draws(item), source(item)));
            }
        }
        for (Vehicle.Output output : model.job.vehicle().outputs().values()) {
            if (output.kind().orElse("feed").equals("feed")) {
                facts.accept(output(output));
            }
        }
    }

    private static Shown<Boolean> draws(Item item) {
        return item instanceof Item.Amplifier || item instanceof Item.Converter ? Shown.of(true) : SupplyNetwork.drawAmperes(item).map(amperes -> amperes > 0);
    }

    // what a thing hangs on

    /** Where several give it current, the worst of them counts. */
    private Shown<String> source(Item item) {
        String inlet = Sides.inlet(item);
        List<Shown<String>> sources = new ArrayList<>();
        for (Vehicle.Output output : model.job.vehicle().outputs().values()) {
            if (givesTo(output, inlet)) {
                sources.add(output.from());
            }
        }
        for (Plan.PinUse pin : model.job.plan().pins().values()) {
            if (pin.connectedTo().isGiven() && model.joined(pin.connectedTo().orElse(""), inlet) && outputOf(pin) == null) {
                sources.add(Shown.missing(new Need("connectors." + pin.id().replace(".", ".cavities.") + ".output", "output that comes out of this cavity", pin.at())));
            }
        }
        if (sides.hangsOnAny(inlet)) {
            sources.add(Shown.of("battery"));
        }
        List<String> proper = model.limit("proper-sources").words();
        TreeSet<String> wrong = new TreeSet<>();
        sources.stream().filter(Shown::isGiven).map(source -> source.orElse("")).filter(source -> !proper.contains(source)).forEach(wrong::add);
        if (!wrong.isEmpty()) {
            return Shown.of(wrong.first());
        }
        return sources.stream().filter(source -> !source.isGiven()).findFirst().orElse(sources.isEmpty()
                ? Shown.missing(new Need("runs", "the run that feeds " + inlet, item.at())) : sources.get(0));
    }

    /** The output of the vehicle sheet that a pin carries; null where nobody wrote one. */
    private Vehicle.Output outputOf(Plan.PinUse pin) {
        Vehicle.Cavity cavity = model.job.vehicle().cavity(pin);
        return cavity == null ? null : model.job.vehicle().outputs().get(cavity.output().orElse(""));
    }

    private boolean givesTo(Vehicle.Output output, String inlet) {
        return model.joined(output.id() + ".out", inlet) || model.job.plan().pins().values().stream().anyMatch(pin -> pin.connectedTo().isGiven()
                && outputOf(pin) == output && model.joined(pin.connectedTo().orElse(""), inlet));
    }

    // what hangs on an output

    private FeedOutput output(Vehicle.Output output) {
        List<Item> fed = model.job.items().values().stream().filter(item -> item instanceof Item.Powered && givesTo(output, Sides.inlet(item))).toList();
        Shown<Boolean> used = Kleene.and(Shown.of(!fed.isEmpty()), output.kind().map("feed"::equals));
        Corner bad = Corner.bad(model.job.limits(), Question.DROP);
        Result atBad = amperes(fed, bad);
        Shown<Double> amperes = WindowedValue.of(bad, bad, atBad, amperes(fed, Corner.good(model.job.limits(), Question.DROP)),
                window -> amperes(fed, Corner.relieved(model.job.limits(), Question.DROP, window)));
        if (!fed.isEmpty() && amperes instanceof Shown.Given<Double> given) {
            model.numbers.put(output.path() + ".drawn", given.value(), Dimension.CURRENT, given.calculation());
        }
        return new FeedOutput(output.path(), output.at(), used, amperes, output.limitAmperes());
    }

    private Result amperes(List<Item> fed, Corner corner) {
        double volts = model.value("drop-reference");
        double sum = 0;
        for (Item item : fed) {
            sum += item instanceof Item.Amplifier amplifier
                    ? amplifiers.supplyWatts(amplifier, 1, corner) / volts + corner.orWindow(amplifier.idleAmperes(), "amplifier-idle-draw")
                    : corner.given(SupplyNetwork.drawAmperes(item));
        }
        return new Result(sum, null, () -> String.join(" + ", fed.stream().map(Item::id).toList()));
    }
}
