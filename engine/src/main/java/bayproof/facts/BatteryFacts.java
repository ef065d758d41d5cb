package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FittedBattery;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.SecondBattery;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.function.Consumer;

/** Facts about each battery: what charges it, where its gas goes, and what parts it from the others. */
final class BatteryFacts {
    private final Model model;
    private final Sides sides;
    private final List<Item.Converter> converters;

    BatteryFacts(Model model) {
        this.model = model;
        this.sides = new Sides(model);
        this.converters = model.job.itemsOf(Item.Converter.class);
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Battery battery : sides.batteries()) {
            facts.accept(fitted(battery));
            if (battery != sides.starter()) {
                facts.accept(second(battery));
            }
        }
    }

    private FittedBattery fitted(Item.Battery battery) {
        Shown<String> chemistry = battery.chemistry();
        Shown<Boolean> inside = inside(battery);
        List<String> outward = model.limit("battery-vents-outward").words();
        Shown<Boolean> cold = model.job.vehicle().supply().lowestCelsius().map(celsius -> celsius < model.value("lithium-coldest-charge"));
        return new FittedBattery(battery.path(), battery.at(), volts(battery, Question.MOST_CHARGE), volts(battery, Question.LEAST_CHARGE),
                battery.mostChargeVolts(), battery.leastChargeVolts(), chemistry.map(kind -> !kind.equals("lithium")),
                model.limit("valve-regulated").words().contains(chemistry.orElse("")), battery.vent(),
                Kleene.or(inside.map(in -> !in), battery.vent().map(outward::contains)), chemistry.map("lithium"::equals),
                Kleene.or(battery.coldCutOff().map("yes"::equals), cold.map(below -> !below)));
    }

    private Shown<Boolean> inside(Item.Battery battery) {
        return model.zoneKind(battery).map(kind -> model.limit("zones-inside").words().contains(kind));
    }

    // charging

    private Shown<Double> volts(Item.Battery battery, Question question) {
        Corner bad = Corner.bad(model.job.limits(), question);
        Result atBad = volts(battery, bad);
        Shown<Double> volts = WindowedValue.of(bad, bad, atBad, volts(battery, Corner.good(model.job.limits(), question)),
                window -> volts(battery, Corner.relieved(model.job.limits(), question, window)));
        if (volts instanceof Shown.Given<Double> given) {
            model.numbers.put(battery.path() + ".charging-volts", given.value(), Dimension.VOLTAGE, given.calculation());
        }
        return volts;
    }

    /** The highest of the set points that reach a battery; at the end of a charge almost nothing is lost on the way. */
    private Result volts(Item.Battery battery, Corner corner) {
        double highest = Double.NEGATIVE_INFINITY;
        String from = null;
        for (Item.Charger charger : model.job.itemsOf(Item.Charger.class)) {
            if (sides.hangsOn(charger.id() + ".output", battery)) {
                corner.givenOrNull(charger.control());
                double volts = SupplyVolts.reached(charger, corner);
                from = volts > highest ? charger.id() : from;
                highest = Math.max(highest, volts);
            }
        }
        for (Item.Converter converter : converters) {
            if (sides.hangsOn(converter.id() + ".out", battery)) {
                double volts = corner.given(converter.setVolts());
                from = volts > highest ? converter.id() : from;
                highest = Math.max(highest, volts);
            }
        }
        if (from == null && corner.isWhole()) {
            corner.need(new Need("runs", "what charges " + battery.id(), battery.at()));
        }
        String source = from;
        return new Result(highest, null, () -> "set point of " + source);
    }

    // isolation

    private SecondBattery second(Item.Battery battery) {
        Item.Battery starter = sides.starter();
        boolean joined = sides.hangsOn(starter.id() + ".positive", battery);
        if (joined && !sides.hangsOnWithoutRelays(starter.id() + ".positive", battery)) {
            Shown<Boolean> closes = steady();
            return new SecondBattery(battery.path(), battery.at(), closes, closes.map(yes -> yes ? "a relay" : "a relay, behind a source whose volts a computer moves"));
        }
        Item.Converter between = converters.stream().filter(converter -> sides.hangsOn(converter.id() + ".in", starter)
                && sides.hangsOn(converter.id() + ".out", battery) || sides.hangsOn(converter.id() + ".out", starter)
                && sides.hangsOn(converter.id() + ".in", battery)).findFirst().orElse(null);
        Shown<Boolean> isolated = joined ? Shown.of(false) : between != null ? Shown.of(true)
                : Shown.missing(new Need("runs", "the converter between " + starter.id() + " and " + battery.id() + ", with its runs", battery.at()));
        return new SecondBattery(battery.path(), battery.at(), isolated,
                Shown.of(joined ? "a plain conductor to " + starter.id() : between == null ? "" : between.id()));
    }

    /** Whether no computer moves the volts that a relay between batteries closes on. */
    private Shown<Boolean> steady() {
        Shown<Boolean> steady = Shown.of(true);
        for (Item.Charger charger : model.job.itemsOf(Item.Charger.class)) {
            steady = Kleene.and(steady, charger.control().map(control -> !control.equals("computer")));
        }
        return steady;
    }
}
