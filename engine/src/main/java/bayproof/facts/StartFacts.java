package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.read.Vehicle;
import bayproof.solve.NoSolution;
import bayproof.solve.OperatingPoint;
import bayproof.solve.Solution;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.StartingItem;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;

/** Facts about each powered item while the engine starts: the volts left to it, and what it does then. */
final class StartFacts {
    private final Model model;
    private final Amplifiers amplifiers;
    private final Sides sides;
    private final Map<String, Dip> relieved = new ConcurrentHashMap<>();
    private Dip bad;
    private Dip good;

    StartFacts(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
        this.sides = new Sides(model);
    }

    void collect(Consumer<Fact> facts) {
        Vehicle.Supply supply = model.job.vehicle().supply();
        // Nothing said is an engine that starts.
        boolean startsEngine = !"no-engine".equals(supply.startStop().orElse(""));
        for (Item item : model.job.items().values()) {
            if (item instanceof Item.Powered powered) {
                Shown<Boolean> onStarter = onStarter(item);
                Shown<String> does = powered.upkeep().atStart();
                Shown<Boolean> rides = does.map("rides-through"::equals);
                boolean asked = startsEngine && onStarter.orElse(false) && rides.orElse(true);
                Shown<Double> volts = asked ? volts(item) : onStarter.map(x -> 0.0);
                if (volts instanceof Shown.Given<Double> given && asked) {
                    model.numbers.put(item.path() + ".volts-at-start", given.value(), Dimension.VOLTAGE, given.calculation());
                }
                facts.accept(new StartingItem(item.path(), item.at(), onStarter, does, rides, volts, powered.minimumVolts(),
                        supply.startStop(), supply.startStop().map("yes"::equals),
                        Shown.of(startsEngine)));
            }
        }
    }

    private Shown<Boolean> onStarter(Item item) {
        if (sides.starter() == null || !sides.hangsOnAny(Sides.inlet(item))) {
            return Shown.missing(new Need("runs", "the run that feeds " + Sides.inlet(item), item.at()));
        }
        return Shown.of(sides.hangsOn(Sides.inlet(item), sides.starter()));
    }

    /** The network at one corner while the starter turns. */
    private final class Dip {
        final Corner corner;
        private final Solution solution;

        Dip(Corner corner) {
            this.corner = corner;
            SupplyNetwork network = new SupplyNetwork(model, amplifiers, corner, State.CRANKING);
            this.solution = network.isWhole() ? network.solve(Level.IDLE) : null;
        }

        Result volts(Item item) {
            if (solution == null) {
                return new Result(Double.NaN, null, null);
            }
            if (solution instanceof NoSolution none) {
                return new Result(Double.NaN, "no working state while the engine starts: " + none.reason(), null);
            }
            double left = ((OperatingPoint) solution).voltsAcross(item.id() + ".supply", item.id() + ".ground");
            return new Result(left, null, () -> SupplyNetwork.volts(model.job.vehicle().supply().startDipVolts().orElse(0.0))
                    + " at the posts less the drop on the way = " + SupplyNetwork.volts(left));
        }
    }

    private Shown<Double> volts(Item item) {
        if (bad == null) {
            bad = new Dip(Corner.bad(model.job.limits(), Question.DROP));
            good = bad.corner.isWhole() ? new Dip(Corner.good(model.job.limits(), Question.DROP)) : bad;
        }
        return WindowedValue.of(bad.corner, good.corner, bad.volts(item), good.volts(item), window -> relieved.computeIfAbsent(window,
                name -> new Dip(Corner.relieved(model.job.limits(), Question.DROP, name))).volts(item));
    }
}
