package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FeedBesideReturn;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.MetalOfRun;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.ReturnPath;
import bayproof.vocabulary.Shown;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about the metal of each conductor, and about each return beside its feed. */
final class ConductorFacts {
    private final Model model;
    private final FeedTree feeds;

    ConductorFacts(Model model) {
        this.model = model;
        this.feeds = model.feeds();
    }

    void collect(Consumer<Fact> facts) {
        for (Run run : model.job.runs().values()) {
            if (!model.job.isFactory(run) && model.wiring.role(run).isPower()) {
                facts.accept(metal(run));
            }
        }
        for (Item item : model.job.items().values()) {
            if (item.hasTerminal("supply")) {
                pair(item, feedOf(item.id() + ".supply", item), returnOf(item.id() + ".ground", item), facts);
            } else if (item instanceof Item.Converter) {
                pair(item, feedOf(item.id() + ".in", item), returnOf(item.id() + ".common", item), facts);
            } else if (item instanceof Item.Battery && item.path().startsWith("items.") && !others(item).isEmpty()) {
                facts.accept(returnPath(item, largestFrom(item), returnOf(item.id() + ".negative", item)));
            }
        }
    }

    private void pair(Item item, Shown<Run> feed, Shown<Run> back, Consumer<Fact> facts) {
        facts.accept(returnPath(item, feed, back));
        facts.accept(beside(item, feed, back));
    }

    // metal

    private MetalOfRun metal(Run run) {
        List<String> clad = model.limit("clad-metals").words();
        List<String> may = run.metal().isGiven() ? List.of(run.metal().orElse("")) : clad;
        Shown<Boolean> suits = Kleene.and(run.ends().from().metals().map(metals -> metals.containsAll(may)),
                run.ends().to().metals().map(metals -> metals.containsAll(may)));
        Shown<String> rated = run.ends().from().metals().with(run.ends().to().metals(), (from, to) ->
                "terminals for " + String.join(", ", from) + " and for " + String.join(", ", to));
        return new MetalOfRun(run.path(), run.at(), run.metal().map(clad::contains), suits, rated);
    }

    // return beside feed

    /** One that stays in the zone of the item, such as a return to a ground point beside it, cannot part from the other on the way. */
    private FeedBesideReturn beside(Item item, Shown<Run> feed, Shown<Run> back) {
        List<Run> out = line(item, feed);
        List<Run> home = line(item, back);
        Shown<Collection<String>> there = feed.then(any -> holes(out));
        Shown<Collection<String>> here = back.then(any -> holes(home));
        Shown<Boolean> same = there.with(here, (one, other) -> one.containsAll(other) || other.containsAll(one));
        if (feed.isGiven() && back.isGiven() && (along(out).isGiven() || along(home).isGiven())) {
            same = Kleene.and(same, along(out).with(along(home), (one, other) -> one.containsAll(other) || other.containsAll(one)));
        }
        return new FeedBesideReturn(item.path(), item.at(), there.with(here, (one, other) -> !one.isEmpty() && !other.isEmpty()), same,
                there.with(here, (one, other) -> "feed through " + String.join(", ", one) + "; return through " + String.join(", ", other)));
    }

    /** The runs of one line from an item on, the joints between them passed. */
    private List<Run> line(Item item, Shown<Run> first) {
        Run run = first.orElse(null);
        if (run == null) {
            return List.of();
        }
        Link link = model.wiring.of(run);
        return model.wiring.line(run, model.job.itemOf(link.from()) == item ? link.from() : link.to());
    }

    private Shown<Collection<String>> holes(List<Run> line) {
        Shown<Collection<String>> all = Shown.of(List.of());
        for (Run run : line) {
            all = all.with(model.body.holes(run), ConductorFacts::union);
        }
        return all;
    }

    /** Routes of a line; a run of it that names none adds none, and a line of which no run names one is not shown. */
    private static Shown<Collection<String>> along(List<Run> line) {
        Shown<Collection<String>> all = null;
        for (Run run : line) {
            if (run.along().isGiven() || line.size() == 1) {
                Shown<Collection<String>> more = run.along().map(names -> names);
                all = all == null ? more : all.with(more, ConductorFacts::union);
            }
        }
        return all == null ? line.get(0).along().map(names -> names) : all;
    }

    private static Collection<String> union(Collection<String> one, Collection<String> other) {
        Set<String> all = new LinkedHashSet<>(one);
        all.addAll(other);
        return all;
    }

    private ReturnPath returnPath(Item item, Shown<Run> feed, Shown<Run> back) {
        Shown<Double> share = area(back).with(area(feed), Sums::share);
        if (share.isGiven()) {
            String working = back.orElse(null).id() + " " + back.orElse(null).size().orElse("") + " / " + feed.orElse(null).id() + " "
                    + feed.orElse(null).size().orElse("") + ", by area";
            model.numbers.put(item.path() + ".return-share-of-feed", share.orElse(0.0), Dimension.RATIO, () -> working);
        }
        return new ReturnPath(item.path(), item.at(), share, back.isGiven() ? new Ladders(model).thicker(back.orElse(null)) : null);
    }

    private Shown<Double> area(Shown<Run> run) {
        return run.then(one -> one.size().map(size -> model.conductors().areaSquareMetres(size)));
    }

    private Shown<Run> feedOf(String terminal, Item item) {
        List<Link> back = feeds.back(terminal);
        return !back.isEmpty() && back.get(0).kind() == Link.Kind.RUN ? Shown.of(back.get(0).run())
                : Shown.missing(new Need("runs", "the run that feeds " + terminal, item.at()));
    }

    /** The first conductor of the way back to a battery. */
    private Shown<Run> returnOf(String terminal, Item item) {
        for (Item.Battery battery : others(item)) {
            List<Link> way = model.wiring.way(terminal, battery.id() + ".negative");
            if (way != null && !way.isEmpty() && way.get(0).kind() == Link.Kind.RUN) {
                return Shown.of(way.get(0).run());
            }
        }
        List<Link> toBody = model.wiring.way(terminal, WiringGraph.BODY);
        return toBody != null && !toBody.isEmpty() && toBody.get(0).kind() == Link.Kind.RUN ? Shown.of(toBody.get(0).run())
                : Shown.missing(new Need("runs", "the way back from " + terminal, item.at()));
    }

    private List<Item.Battery> others(Item item) {
        return model.job.itemsOf(Item.Battery.class).stream().filter(battery -> battery != item).toList();
    }

    /** The largest of the runs that leave a battery. */
    private Shown<Run> largestFrom(Item battery) {
        Shown<Run> largest = Shown.missing(new Need("runs", "the run that leaves " + battery.id() + ".positive", battery.at()));
        for (FeedTree.Departure departure : feeds.departures()) {
            if (departure.source() == battery) {
                Run run = departure.run();
                if (!run.size().isGiven()) {
                    return Shown.of(run);
                }
                if (!largest.isGiven() || area(run) > area(largest.orElse(null))) {
                    largest = Shown.of(run);
                }
            }
        }
        return largest;
    }

    private double area(Run run) {
        return model.conductors().areaSquareMetres(run.size().orElse(null));
    }
}
