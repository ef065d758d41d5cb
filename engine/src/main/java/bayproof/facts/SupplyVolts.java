package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The highest volts that sources give: each battery at rest, each alternator and each converter at its set point. */
final class SupplyVolts {
    private final Model model;

    SupplyVolts(Model model) {
        this.model = model;
    }

    /** Sources of the supply. */
    List<Item> sources() {
        return model.job.items().values().stream().filter(item -> !outlet(item).isEmpty()).toList();
    }

    /** The live post of a source; empty for anything else. */
    static String outlet(Item item) {
        return item instanceof Item.Battery ? item.id() + ".positive" : item instanceof Item.Charger ? item.id() + ".output"
                : item instanceof Item.Converter ? item.id() + ".out" : "";
    }

    /** What one source gives by itself. */
    Shown<Double> of(Item source) {
        return highest(one -> one == source, null, 0);
    }

    /**
     * The highest of the sources that a terminal hangs on, and no less than a floor.
     *
     * @param item the thing whose terminal it is
     */
    Shown<Double> at(String terminal, Item item, double floor) {
        return highest(source -> model.joined(outlet(source), terminal), new Need("runs", "the run that feeds " + terminal, item.at()), floor);
    }

    private Shown<Double> highest(Predicate<Item> here, Need otherwise, double floor) {
        Corner bad = Corner.bad(model.job.limits(), Question.HIGHEST_VOLTS);
        Result atBad = highest(here, otherwise, floor, bad);
        return WindowedValue.of(bad, bad, atBad, highest(here, otherwise, floor, Corner.good(model.job.limits(), Question.HIGHEST_VOLTS)),
                window -> highest(here, otherwise, floor, Corner.relieved(model.job.limits(), Question.HIGHEST_VOLTS, window)));
    }

    private Result highest(Predicate<Item> here, Need otherwise, double floor, Corner corner) {
        double highest = floor;
        String from = "what any 12 V supply reaches";
        List<Item> joined = sources().stream().filter(here).toList();
        for (Item source : joined) {
            double volts = volts(source, corner);
            from = volts > highest ? source.id() : from;
            highest = Math.max(highest, volts);
        }
        if (joined.isEmpty()) {
            corner.need(otherwise);
        }
        String source = from;
        return new Result(highest, null, () -> source);
    }

    private static double volts(Item source, Corner corner) {
        if (source instanceof Item.Charger charger) {
            return reached(charger, corner);
        }
        return source instanceof Item.Converter converter ? corner.given(converter.setVolts())
                : corner.orWindow(((Item.Battery) source).restVolts(), "battery-rest");
    }

    /** The volts at which a charger ends a charge: a computer moves them over the whole window, whatever was read once. */
    static double reached(Item.Charger charger, Corner corner) {
        return "computer".equals(charger.control().orElse("")) ? corner.window(window(charger), charger.path() + ".set-point") : setPoint(charger, corner);
    }

    static double setPoint(Item.Charger charger, Corner corner) {
        return corner.orWindow(charger.setVolts(), window(charger));
    }

    private static String window(Item.Charger charger) {
        return charger instanceof Item.Alternator ? "alternator-set-point" : "traction-converter-set-point";
    }

    /** Whether the job puts anything on the vehicle's supply: a thing that draws, stores or guards current, or a pin that gives it. */
    boolean isUsed() {
        return Stream.concat(model.job.items().values().stream().filter(item -> !item.path().startsWith("supply."))
                .filter(item -> item instanceof Item.Powered || item instanceof Item.Converter || item instanceof Item.Battery || item instanceof Item.Fuse
                        || item instanceof Item.FuseBlock), model.job.plan().pins().values().stream()
                .filter(pin -> pin.function().orElse("supply").endsWith("supply"))).findAny().isPresent();
    }
}
