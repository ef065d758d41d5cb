package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Mount;
import bayproof.read.Taken;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.PlacedBattery;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.StandbyBefore;
import bayproof.vocabulary.UsedSource;
import java.util.function.Consumer;

/** Facts about each source where it is, and about what the vehicle drew before the job. */
final class SourceFacts {
    private final Model model;
    private final SupplyVolts volts;
    private final MountFacts mounts;

    SourceFacts(Model model) {
        this.model = model;
        this.volts = new SupplyVolts(model);
        this.mounts = new MountFacts(model);
    }

    void collect(Consumer<Fact> facts) {
        Shown<Boolean> used = Shown.of(volts.isUsed());
        for (Item source : volts.sources()) {
            facts.accept(new UsedSource(source.path(), source.at(), used, volts.of(source)));
            if (source instanceof Item.Battery battery) {
                facts.accept(placed(battery, used));
            }
        }
        facts.accept(before());
    }

    private PlacedBattery placed(Item.Battery battery, Shown<Boolean> used) {
        boolean added = !battery.path().startsWith("supply.");
        Mount mount = battery.mount();
        return new PlacedBattery(battery.path(), battery.at(), used, battery.chemistry(), Shown.of(added), model.zoneCelsius(battery),
                battery.hottestChargeCelsius(), model.job.vehicle().supply().lowestCelsius(), battery.coldestUseCelsius(),
                added ? heldShare(battery, mount) : Shown.of(0.0), mounts.moreFasteners(battery));
    }

    /** The lesser of a named force and a number of times the battery's weight is what has to be stood. */
    private Shown<Double> heldShare(Item.Battery battery, Mount mount) {
        double force = model.value("battery-hold-force");
        double weights = model.value("battery-hold-weights");
        return mounts.holds(mount).with(battery.fitting().massKilograms(), (newtons, kilograms) -> new double[] {newtons, kilograms}).then(pair -> {
            double asked = Sums.holdDownNewtons(pair[1], force, weights);
            return Shown.of(Sums.share(pair[0], asked), () -> Model.print(pair[0], Dimension.FORCE) + " / " + Model.print(asked, Dimension.FORCE));
        });
    }

    private StandbyBefore before() {
        String path = "supply.standby-before";
        boolean adds = model.job.items().values().stream().anyMatch(item -> item instanceof Item.Powered || item instanceof Item.Converter);
        Taken taken = model.job.taken().get(path);
        Taken last = model.job.taken().get("sleep.third.current");
        Need who = new Need("readings", "a reading of " + path + ": who measured it, when and with what", model.job.planAt());
        Shown<Boolean> first = taken == null ? Shown.missing(who) : last == null ? Shown.of(true)
                : taken.when().with(last.when(), (before, after) -> before.compareTo(after) < 0);
        return new StandbyBefore("readings", taken == null ? model.job.planAt() : taken.at(), Shown.of(adds),
                taken == null ? Shown.missing(who) : taken.word(), first);
    }
}
