package bayproof.facts;

import bayproof.demand.Limit;
import bayproof.graph.Link;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.CableColors;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.PowerCable;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.StrapBesideFeed;
import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about the cables that the job brings: heat, size, splices and colors, and the strap beside them. */
final class CableFacts {
    private final Model model;
    private final FeedTree feeds;

    CableFacts(Model model) {
        this.model = model;
        this.feeds = model.feeds();
    }

    void collect(Consumer<Fact> facts) {
        for (Run run : model.job.plan().runs().values()) {
            if (model.wiring.role(run).isPower()) {
                facts.accept(cable(run));
            }
        }
        if (!model.job.plan().runs().isEmpty()) {
            facts.accept(colors());
        }
        for (Item.Battery battery : model.job.itemsOf(Item.Battery.class)) {
            if (battery.path().startsWith("supply.")) {
                straps(battery, facts);
            }
        }
    }

    // one cable

    private PowerCable cable(Run run) {
        return new PowerCable(run.path(), run.at(), insulation(run), model.ambientCelsius(run), counts(run), model.sheathed(run),
                run.size().map(model.conductors()::areaSquareMetres), main(run), inOnePiece(run), new Ladders(model).thicker(run));
    }

    private Shown<Boolean> inOnePiece(Run run) {
        boolean joined = model.wiring.isJoint(run.from().orElse("")) || model.wiring.isJoint(run.to().orElse(""));
        return Kleene.and(Shown.of(!joined), run.splices().map(count -> count == 0));
    }

    private Shown<Double> insulation(Run run) {
        Shown<Double> given = model.insulationCelsius(run);
        if (!(given instanceof Shown.Missing)) {
            return given;
        }
        Limit usual = model.limit("insulation-class");
        return new Shown.Assumed<>(usual.low(), usual.high(), Windows.unweighed(List.of(new Window(run.path() + ".insulation", usual.name(), usual.low(), usual.high(), 0))),
                usual::says);
    }

    private Shown<Boolean> counts(Run run) {
        Numbers.Figure amperes = model.numbers.all().get(run.path() + ".current-full-sine");
        return amperes == null ? Shown.missing(new Need(run.path(), "the current at full sine in " + run.id(), run.at()))
                : Shown.of(amperes.value() >= model.value("thin-wire-current"));
    }

    /** Whether it leaves a battery or enters a block; what leads on from the inlet of a block is a branch. */
    private Shown<Boolean> main(Run run) {
        String near = feeds.nearEnd(model.wiring.of(run));
        boolean here = feeds.departures().stream().anyMatch(one -> one.run() == run && one.source() instanceof Item.Battery)
                || entersBlock(run.from(), near) || entersBlock(run.to(), near);
        return here ? Shown.of(true) : run.from().with(run.to(), (from, to) -> false);
    }

    private boolean entersBlock(Shown<String> end, String near) {
        String terminal = end.orElse("");
        return model.job.itemOf(terminal) instanceof Item.FuseBlock && terminal.endsWith(".in") && !terminal.equals(near);
    }

    // colors

    private CableColors colors() {
        List<String> warning = model.limit("warning-colors").words();
        TreeSet<String> all = new TreeSet<>();
        Shown<List<String>> others = model.job.plan().colors();
        boolean bare = false;
        for (Run run : model.job.plan().runs().values()) {
            run.color().map(all::add);
            bare |= !run.color().isGiven();
        }
        all.addAll(others.orElse(List.of()));
        TreeSet<String> wrong = new TreeSet<>(all);
        wrong.removeIf(color -> List.of(color.split("-")).stream().noneMatch(warning::contains));
        Shown<Boolean> plain = !wrong.isEmpty() ? Shown.of(false) : bare ? others.then(list -> list.isEmpty()
                ? Shown.missing(new Need("colors", "colors of the cables that the job brings", others.atOr(model.job.planAt()))) : Shown.of(true)) : Shown.of(true);
        return new CableColors("colors", others.atOr(model.job.planAt()), plain, Shown.of(String.join(", ", wrong.isEmpty() ? all : wrong)));
    }

    // the strap

    private void straps(Item.Battery battery, Consumer<Fact> facts) {
        List<Run> leaving = feeds.departures().stream().filter(one -> one.source() == battery).map(FeedTree.Departure::run).toList();
        List<Run> straps = new ArrayList<>();
        for (Link link : model.wiring.at(battery.id() + ".negative")) {
            if (model.isStrap(link) || link.run() != null && WiringGraph.BODY.equals(link.other(battery.id() + ".negative"))) {
                straps.add(link.run());
            }
        }
        Shown<Double> strap = straps.isEmpty() ? Shown.missing(new Need("supply.links", "the strap from " + battery.id() + ".negative to the body", battery.at()))
                : Shown.of(0.0);
        for (Run one : straps) {
            strap = strap.with(one.size(), (sum, size) -> sum + model.conductors().areaSquareMetres(size));
        }
        Shown<Boolean> fed = isFed(leaving);
        Shown<Double> feed = fed.map(any -> 0.0);
        for (Run one : leaving) {
            feed = feed.with(one.size(), (most, size) -> Math.max(most, model.conductors().areaSquareMetres(size)));
        }
        Run named = straps.isEmpty() ? null : straps.get(0);
        facts.accept(new StrapBesideFeed(named == null ? battery.path() : named.path(), named == null ? battery.at() : named.at(), fed,
                strap.with(feed, (one, other) -> new double[] {one, other}).then(pair -> Shown.of(Sums.share(pair[0], pair[1]),
                        () -> Model.print(pair[0], Dimension.AREA) + " / " + Model.print(pair[1], Dimension.AREA))), strap));
    }

    /** Where a thing of the job hangs on nothing yet, a feed may still leave this battery. */
    private Shown<Boolean> isFed(List<Run> leaving) {
        if (!leaving.isEmpty()) {
            return Shown.of(true);
        }
        Sides sides = new Sides(model);
        return model.job.items().values().stream().filter(item -> item instanceof Item.Powered || item instanceof Item.Converter)
                .filter(item -> !sides.hangsOnAny(Sides.inlet(item))).findFirst()
                .map(item -> Shown.<Boolean>missing(new Need("runs", "the run that feeds " + Sides.inlet(item), item.at()))).orElse(Shown.of(false));
    }
}
