package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.graph.Link;
import bayproof.read.FuseMake;
import bayproof.read.Item;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FuseDuty;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.VoltsAtItem;
import java.util.List;
import java.util.function.Consumer;

/** Facts about the highest volts and the largest fault current that things on the supply may meet. */
final class FuseDutyFacts {
    /** A cold conductor lets most through. */
    private static final double REFERENCE_CELSIUS = 20;

    private final Model model;
    private final SupplyVolts volts;

    FuseDutyFacts(Model model) {
        this.model = model;
        this.volts = new SupplyVolts(model);
    }

    void collect(Consumer<Fact> facts) {
        double floor = model.value("highest-supply-volts");
        for (Item item : model.job.items().values()) {
            if (item instanceof Item.Powered powered) {
                facts.accept(new VoltsAtItem(item.path(), item.at(), volts.at(Sides.inlet(item), item, floor), powered.upkeep().maximumVolts()));
            } else if (item instanceof Item.Converter converter) {
                facts.accept(new VoltsAtItem(item.path(), item.at(), volts.at(Sides.inlet(item), item, floor), converter.upkeep().maximumVolts()));
            } else if (item instanceof Item.Fuse fuse) {
                facts.accept(duty(fuse, fuse.make()));
            } else if (item instanceof Item.FuseBlock block) {
                facts.accept(duty(block, block.make()));
            }
        }
    }

    private FuseDuty duty(Item item, FuseMake make) {
        Shown<Double> fault = faultAmperes(item);
        if (fault instanceof Shown.Given<Double> given) {
            model.numbers.put(item.path() + ".fault-current", given.value(), Dimension.CURRENT, given.calculation());
        }
        return new FuseDuty(item.path(), item.at(), volts.at(item.id() + ".in", item, 0), make.ratedVolts(), fault, make.breakingAmperes());
    }

    // a dead short

    /** A short behind the fuse draws from every battery on the other side of it; the larger of its two sides counts. */
    private Shown<Double> faultAmperes(Item item) {
        Corner bad = Corner.bad(model.job.limits(), Question.FAULT);
        Result atBad = faultAmperes(item, bad);
        return WindowedValue.of(bad, bad, atBad, faultAmperes(item, Corner.good(model.job.limits(), Question.FAULT)),
                window -> faultAmperes(item, Corner.relieved(model.job.limits(), Question.FAULT, window)));
    }

    private Result faultAmperes(Item item, Corner corner) {
        double before = 0;
        double behind = 0;
        for (Item.Battery battery : model.job.itemsOf(Item.Battery.class)) {
            List<Link> way = model.wiring.way(battery.id() + ".positive", item.id() + ".in");
            if (way == null) {
                continue;
            }
            double ohms = corner.orWindow(battery.internalOhms(), "battery-resistance");
            boolean through = false;
            for (Link link : way) {
                through |= link.item() == item;
                ohms += link.kind() == Link.Kind.RUN ? runOhms(link, corner) : 0;
            }
            double amperes = Sums.shortAmperes(corner.orWindow(battery.restVolts(), "battery-rest"), ohms);
            before += through ? 0 : amperes;
            behind += through ? amperes : 0;
        }
        if (before == 0 && behind == 0 && corner.isWhole()) {
            corner.need(new Need("runs", "the run that feeds " + item.id() + ".in", item.at()));
        }
        return new Result(Math.max(before, behind), null, () -> "volts at rest / (inner resistance of the battery + conductors to the fuse at "
                + Model.print(REFERENCE_CELSIUS, Dimension.TEMPERATURE) + "), nothing counted on the way back");
    }

    private double runOhms(Link link, Corner corner) {
        String size = corner.givenOrNull(link.run().size());
        double metres = corner.given(model.lengthMetres(link.run()));
        // Copper lets most through: a metal that nobody named counts as copper.
        return size == null ? Double.NaN : model.conductors().ohmsPerMetre(size, link.run().metal().orElse("copper"), REFERENCE_CELSIUS) * metres;
    }
}
