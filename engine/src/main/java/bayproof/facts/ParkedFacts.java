package bayproof.facts;

import bayproof.demand.Limit;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.SleepTest;
import bayproof.read.Upkeep;
import bayproof.read.Vehicle;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.ChargedSleeper;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.ParkedBattery;
import bayproof.vocabulary.ParkedItem;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Facts about the vehicle asleep: what each battery still gives, how long it lasts, and who keeps asking. */
final class ParkedFacts {
    private final Model model;
    private final Sides sides;
    private final Map<Item, Upkeep> resting = new LinkedHashMap<>();

    ParkedFacts(Model model) {
        this.model = model;
        this.sides = new Sides(model);
        for (Item item : model.job.items().values()) {
            if (item instanceof Item.Powered powered) {
                resting.put(item, powered.upkeep());
            } else if (item instanceof Item.Converter converter) {
                resting.put(item, converter.upkeep());
            }
        }
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Battery battery : sides.batteries()) {
            facts.accept(battery(battery));
        }
        if (sides.batteries().isEmpty() && !resting.isEmpty()) {
            Shown<Double> missing = Shown.missing(new Need("supply.sources", "the battery that feeds the job", model.job.planAt()));
            facts.accept(new ParkedBattery("supply.sources", model.job.planAt(), true, missing, missing.map(x -> true), missing,
                    model.job.plan().parkedSeconds()));
        }
        boolean chargedParked = !model.job.itemsOf(Item.TractionConverter.class).isEmpty();
        resting.forEach((item, upkeep) -> {
            if (chargedParked) {
                facts.accept(sleeper(item, upkeep));
            }
            if (item instanceof Item.Powered) {
                Shown<Boolean> quiet = upkeep.pollsBus().map("no"::equals);
                facts.accept(new ParkedItem(item.path(), item.at(), upkeep.pollsBus(), Kleene.or(quiet, sleepTest())));
            }
        });
    }

    private ChargedSleeper sleeper(Item item, Upkeep upkeep) {
        SleepTest test = model.job.plan().sleep();
        // Nothing said of the charge is a test that shows nothing of it.
        boolean read = test.charging().orElse("no").equals("yes") && test.third().amperes().isGiven();
        return new ChargedSleeper(item.path(), item.at(), upkeep.sleepsBy().map("supply-volts"::equals), Shown.of(!read), upkeep.sleepBelowVolts(),
                model.job.vehicle().supply().parkedChargeVolts());
    }

    private ParkedBattery battery(Item.Battery battery) {
        Vehicle.Supply supply = model.job.vehicle().supply();
        boolean starter = battery == sides.starter();
        Shown<Double> standby = standbyAmperes(battery);
        String path = battery.path() + ".standby";
        if (standby instanceof Shown.Given<Double> given) {
            model.numbers.put(path, given.value(), Dimension.CURRENT, given.calculation());
        }
        Shown<Boolean> drained = standby.map(amperes -> amperes > 0);
        double share = model.value("parked-share-of-capacity");
        Shown<Double> lasts = battery.capacityCoulombs().with(standby, (coulombs, amperes) -> new double[] {coulombs, amperes})
                .then(pair -> Shown.of(Sums.lastsSeconds(share, pair[0], pair[1]), () -> Model.print(share, Dimension.RATIO) + " of "
                        + Model.print(pair[0], Dimension.CHARGE) + " over " + Model.print(pair[1], Dimension.CURRENT)));
        return new ParkedBattery(battery.path(), battery.at(), starter, starter ? share(standby, supply) : Shown.of(0.0), drained, lasts,
                model.job.plan().parkedSeconds());
    }

    /** Standby current of everything that hangs on a battery; what hangs on two may draw it all from either. */
    private Shown<Double> standbyAmperes(Item.Battery battery) {
        Item.Battery starter = sides.starter();
        boolean starts = battery == starter || sides.hangsOn(starter.id() + ".positive", battery);
        Shown<Double> sum = starts ? model.job.vehicle().supply().standbyBeforeAmperes() : Shown.of(0.0);
        List<String> terms = new ArrayList<>();
        if (starts) {
            terms.add("the vehicle before the job");
        }
        for (Map.Entry<Item, Upkeep> one : resting.entrySet()) {
            Item item = one.getKey();
            Shown<Double> amperes = one.getValue().standbyAmperes();
            boolean here = sides.hangsOn(Sides.inlet(item), battery) || starts && onFactoryFeed(item);
            if (here) {
                sum = sum.with(amperes, Double::sum);
                terms.add(item.id());
            } else if (!sides.hangsOnAny(Sides.inlet(item)) && !onFactoryFeed(item) && starts && amperes.orElse(1.0) > 0) {
                // Nobody knows yet which battery it will hang on; the one the engine starts from must bear it.
                sum = sum.with(Shown.<Double>missing(new Need("runs", "the run that feeds " + Sides.inlet(item), item.at())), Double::sum);
            }
        }
        for (Item.Relay relay : model.job.itemsOf(Item.Relay.class)) {
            // Nothing in the model opens the way from a battery to a coil.
            if (sides.hangsOn(relay.id() + ".86", battery)) {
                sum = sum.with(relay.coilAmperes(), Double::sum);
                terms.add(relay.id());
            }
        }
        return sum.then(total -> Shown.of(total, () -> String.join(" + ", terms) + " = " + Model.print(total, Dimension.CURRENT)));
    }

    /** Whether a constant supply of the factory loom is joined to an item. */
    private boolean onFactoryFeed(Item item) {
        return model.job.plan().pins().values().stream().anyMatch(pin -> pin.function().orElse("").equals("constant-supply")
                && pin.connectedTo().orElse("").startsWith(item.id() + "."));
    }

    private Shown<Double> share(Shown<Double> standby, Vehicle.Supply supply) {
        Shown<Double> limit = supply.standbyLimitAmperes();
        if (limit.isGiven() || !standby.isGiven()) {
            return limit.isGiven() ? standby.with(limit, (draw, most) -> new double[] {draw, most})
                    .then(pair -> Shown.of(Sums.share(pair[0], pair[1]), () -> working(standby, pair[1]))) : standby;
        }
        Limit usual = model.limit("standby-usual");
        double draw = standby.orElse(0.0);
        return new Shown.Assumed<>(Sums.share(draw, usual.low()), Sums.share(draw, usual.high()), Windows.unweighed(List.of(new Window(supply.path() + ".standby-limit",
                usual.name(), usual.low(), usual.high(), 0))), () -> working(standby, usual.low()));
    }

    private static String working(Shown<Double> standby, double limit) {
        return ((Shown.Given<Double>) standby).calculation().get() + ", over " + Model.print(limit, Dimension.CURRENT);
    }

    private Shown<Boolean> sleepTest() {
        if (model.job.plan().steps().isEmpty()) {
            return Shown.missing(new Need("steps", "the order of work, with a sleep test", model.job.planAt()));
        }
        Shown<Boolean> any = Shown.of(false);
        for (Plan.Step step : model.job.plan().steps().values()) {
            any = Kleene.or(any, step.does().map("sleep-test"::equals));
        }
        return any;
    }
}
