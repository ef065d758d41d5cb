package bayproof.facts;

import bayproof.facts.FeedTree.Departure;
import bayproof.graph.Link;
import bayproof.graph.Role;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.ChargingRun;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.GuardedRun;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SourceKind;
import bayproof.vocabulary.SourceRun;
import bayproof.vocabulary.StepDown;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about what guards each live conductor. */
final class ProtectionFacts {
    private final Model model;
    private final FeedTree feeds;
    private final Ladders ladders;
    private final Ampacities ampacities;

    ProtectionFacts(Model model) {
        this.model = model;
        this.ampacities = new Ampacities(model);
        this.feeds = model.feeds();
        this.ladders = new Ladders(model);
    }

    void collect(Consumer<Fact> facts) {
        sourceRuns(facts);
        for (Run run : model.job.runs().values()) {
            if (!model.job.isFactory(run) && model.wiring.role(run) == Role.FEED) {
                facts.accept(guarded(run));
                String near = feeds.nearEnd(model.wiring.of(run));
                if (near == null || !feeds.isPost(near)) {
                    facts.accept(stepDown(run, near));
                }
            }
        }
    }

    // from the post to the first fuse

    private void sourceRuns(Consumer<Fact> facts) {
        Set<String> said = new HashSet<>();
        for (Departure departure : feeds.departures()) {
            boolean battery = departure.source() instanceof Item.Battery;
            // A run that joins two posts of a kind is one subject: it is judged from both ends at once.
            if (said.add(battery + departure.run().id())) {
                facts.accept(battery ? fromBattery(departure) : fromCharger(departure));
            }
        }
        silentBattery(facts);
        silentConverters(facts);
    }

    private SourceRun fromBattery(Departure departure) {
        Run run = departure.run();
        Stretch stretch = toFuse(model.wiring.of(run), departure.post(), null);
        stretch.note(model, run.path() + ".length-to-fuse");
        return new SourceRun(run.path(), run.at(), departure.source().id(), SourceKind.BATTERY,
                stretch.fused, stretch.metres, stretch.sheathed, ladders.shorter(run));
    }

    private ChargingRun fromCharger(Departure departure) {
        Run run = departure.run();
        Stretch stretch = toFuse(model.wiring.of(run), departure.post(), null);
        stretch.note(model, run.path() + ".length-from-charger");
        return new ChargingRun(run.path(), run.at(), departure.source().id(), wantsFuse(departure.source()),
                stretch.fused, stretch.metres, ladders.shorter(run));
    }

    private static Shown<Boolean> wantsFuse(Item source) {
        return source instanceof Item.Converter converter ? converter.selfLimiting().map("no"::equals) : Shown.of(true);
    }

    private void silentBattery(Consumer<Fact> facts) {
        if (feeds.departures().stream().anyMatch(one -> one.source() instanceof Item.Battery) || !needsFeed()) {
            return;
        }
        List<Item.Battery> batteries = model.job.itemsOf(Item.Battery.class);
        String path = batteries.isEmpty() ? "supply.sources" : batteries.get(0).path();
        Shown<Boolean> missing = Shown.missing(batteries.isEmpty()
                ? new Need("supply.sources", "the battery that feeds the job", model.job.planAt())
                : openFeed("the run that leaves " + batteries.get(0).id() + ".positive"));
        facts.accept(new SourceRun(path, batteries.isEmpty() ? model.job.planAt() : batteries.get(0).at(),
                batteries.isEmpty() ? "" : batteries.get(0).id(), SourceKind.BATTERY, missing, missing.map(x -> 0.0), missing, null));
    }

    /** A converter whose output nobody wrote still has one. */
    private void silentConverters(Consumer<Fact> facts) {
        for (Item.Converter converter : model.job.itemsOf(Item.Converter.class)) {
            if (feeds.departures().stream().noneMatch(one -> one.source() == converter)) {
                Shown<Boolean> missing = Shown.missing(openFeed("the run that leaves " + converter.id() + ".out"));
                facts.accept(new ChargingRun(converter.path(), converter.at(), converter.id(), wantsFuse(converter),
                        missing, missing.map(x -> 0.0), null));
            }
        }
    }

    private boolean needsFeed() {
        return model.job.items().values().stream().anyMatch(item -> item.hasTerminal("supply"))
                || model.job.runs().values().stream().anyMatch(run -> !model.job.isFactory(run) && model.wiring.role(run) == Role.FEED);
    }

    /** What is asked when a live conductor hangs on nothing: the open end of a run if there is one. */
    private Need openFeed(String ask) {
        for (Run run : model.job.runs().values()) {
            if (!run.from().isGiven() || !run.to().isGiven()) {
                return (run.from().isGiven() ? run.to() : run.from()).needs().get(0);
            }
        }
        return new Need("runs", ask, model.job.planAt());
    }

    /** The conductor from a terminal on until a fuse that fits stands in every way. */
    private static final class Stretch {
        private Shown<Boolean> fused;
        private Shown<Double> metres;
        private Shown<Boolean> sheathed;

        void note(Model model, String path) {
            if (fused.orElse(false) && metres.isGiven()) {
                model.numbers.put(path, metres.orElse(0.0), Dimension.LENGTH, () -> "conductor from the post to the fuse, runs in series added");
            }
        }
    }

    /**
     * Walks from the near end of a run to the first fuse on every branch.
     *
     * @param fitting ampacity a fuse must not exceed to count; null when any fuse counts
     */
    private Stretch toFuse(Link run, String near, Shown<Double> fitting) {
        Stretch stretch = new Stretch();
        stretch.fused = Shown.of(true);
        stretch.metres = Shown.of(0.0);
        stretch.sheathed = Shown.of(true);
        walk(run, near, fitting, stretch, Shown.of(0.0), new HashSet<>());
        return stretch;
    }

    private void walk(Link link, String near, Shown<Double> fitting, Stretch stretch, Shown<Double> before, Set<Link> seen) {
        if (!seen.add(link)) {
            return;
        }
        String far = link.other(near);
        Shown<Double> here = before;
        if (link.kind() == Link.Kind.FUSE) {
            if (fitting == null) {
                return;
            }
            Shown<Boolean> fits = fits(link.ratingAmperes(), fitting);
            if (!fits.isGiven()) {
                stretch.fused = Kleene.and(stretch.fused, fits);
                return;
            }
            if (fits.orElse(false)) {
                return;
            }
        } else if (link.kind() == Link.Kind.RUN) {
            here = before.with(model.lengthMetres(link.run()), Double::sum);
            stretch.metres = longest(stretch.metres, here);
            stretch.sheathed = Kleene.and(stretch.sheathed, model.sheathed(link.run()));
        }
        if (WiringGraph.isOpen(far)) {
            stretch.fused = Kleene.and(stretch.fused, (link.run().to().isGiven() ? link.run().from() : link.run().to()).map(end -> true));
            return;
        }
        if (feeds.isPost(far)) {
            // Another source feeds the same conductor from its far end, and nothing stands between the two.
            stretch.fused = Shown.of(false);
            return;
        }
        List<Link> next = feeds.onward(link, near);
        if (next.isEmpty()) {
            boolean ends = model.job.itemOf(far) != null && far.endsWith(".supply");
            stretch.fused = Kleene.and(stretch.fused, ends ? Shown.of(false)
                    : Shown.missing(new Need("runs", "the run that goes on from " + far, link.run() == null ? model.job.planAt() : link.run().at())));
        }
        for (Link one : next) {
            walk(one, far, fitting, stretch, here, seen);
        }
    }

    private static Shown<Double> longest(Shown<Double> one, Shown<Double> other) {
        return one.with(other, Math::max);
    }

    private Shown<Boolean> fits(Shown<Double> rating, Shown<Double> ampacity) {
        if (ampacity instanceof Shown.Collapsed) {
            return Shown.of(false);
        }
        double share = model.value("fuse-guards-conductor");
        if (ampacity instanceof Shown.Assumed<Double> assumed) {
            return rating.then(amperes -> (amperes <= share * assumed.bad()) == (amperes <= share * assumed.good())
                    ? Shown.of(amperes <= share * assumed.bad())
                    : Shown.missing(assumed.windows().all().stream().flatMap(window -> window.paths().stream().map(path ->
                    new Need(path, model.limit(window.limit()).says(), model.job.planAt()))).toList()));
        }
        return rating.with(ampacity, (amperes, most) -> amperes <= share * most);
    }

    // fuse against conductor

    private GuardedRun guarded(Run run) {
        Link link = model.wiring.of(run);
        String near = feeds.nearEnd(link);
        Shown<Double> ampacity = ampacities.of(run);
        noteAmpacity(run, ampacity);
        if (near == null) {
            Shown<Boolean> unfed = Shown.missing(openFeed("the run that feeds " + run.id()));
            return new GuardedRun(run.path(), run.at(), unfed, "", unfed.map(x -> 0.0), null, null);
        }
        Link guard = guard(link, near);
        if (guard == null) {
            Shown<Boolean> none = openAhead(link, near);
            return new GuardedRun(run.path(), run.at(), none, "", none.map(x -> 0.0), null, null);
        }
        Shown<Double> share = share(guard, run, ampacity);
        if (share instanceof Shown.Given<Double> given) {
            model.numbers.put(run.path() + ".fuse-share", given.value(), Dimension.RATIO, given.calculation());
        }
        Knob weaker = guard.ratingAmperes().isGiven() ? ladders.weaker(guard.id(), guard.ratingAmperes().orElse(0.0)) : null;
        return new GuardedRun(run.path(), run.at(), Shown.of(true), guard.id(), share, weaker, ladders.thicker(run));
    }

    private Shown<Double> share(Link guard, Run run, Shown<Double> ampacity) {
        if (ampacity instanceof Shown.Assumed<Double> assumed && guard.ratingAmperes().isGiven()) {
            double rating = guard.ratingAmperes().orElse(0.0);
            return new Shown.Assumed<>(Sums.share(rating, assumed.bad()), Sums.share(rating, assumed.good()), assumed.windows(),
                    () -> shareText(guard, rating, assumed.bad()));
        }
        return guard.ratingAmperes().with(ampacity, (rating, most) -> new double[] {rating, most}).then(pair ->
                Shown.of(Sums.share(pair[0], pair[1]), () -> shareText(guard, pair[0], pair[1])));
    }

    private static String shareText(Link guard, double rating, double ampacity) {
        return guard.id() + " " + Model.print(rating, Dimension.CURRENT) + " / ampacity " + Model.print(ampacity, Dimension.CURRENT);
    }

    /**
     * The fuse that guards a run: the smallest before it, or the one straight behind it. Behind a step down in size the fuse at the step
     * counts as well: how far from the step it may lie is a rule of its own.
     */
    private Link guard(Link link, String near) {
        List<Link> back = feeds.back(near);
        Link smallest = null;
        for (Link before : back) {
            smallest = before.kind() == Link.Kind.FUSE ? smaller(smallest, before) : smallest;
        }
        return smallest == null || isBehindStep(link.run(), back) ? smaller(smallest, straightBehind(link, near)) : smallest;
    }

    /** Whether some run before it is known to be thicker. */
    private boolean isBehindStep(Run run, List<Link> back) {
        return back.stream().anyMatch(before -> before.kind() == Link.Kind.RUN && isThinner(run, before.run()).orElse(false));
    }

    private static Link smaller(Link one, Link other) {
        return one == null || other != null && other.ratingAmperes().orElse(0.0) < one.ratingAmperes().orElse(0.0) ? other : one;
    }

    private Link straightBehind(Link link, String near) {
        Link at = link;
        String from = near;
        Set<Link> seen = new HashSet<>();
        while (at != null && seen.add(at)) {
            List<Link> onward = feeds.onward(at, from);
            from = at.other(from);
            // Behind the post of another source a fuse guards that source's conductors, not this one.
            at = onward.size() == 1 && !feeds.isPost(from) ? onward.get(0) : null;
            if (at != null && at.kind() == Link.Kind.FUSE) {
                return at;
            }
        }
        return null;
    }

    private Shown<Boolean> openAhead(Link link, String near) {
        Shown<Boolean> fused = toFuse(link, near, null).fused;
        return fused.needs().isEmpty() ? Shown.of(false) : fused;
    }

    private void noteAmpacity(Run run, Shown<Double> ampacity) {
        if (ampacity instanceof Shown.Given<Double> given) {
            model.numbers.put(run.path() + ".ampacity", given.value(), Dimension.CURRENT, given.calculation());
        } else if (ampacity instanceof Shown.Assumed<Double> assumed) {
            model.numbers.put(run.path() + ".ampacity", assumed.bad(), Dimension.CURRENT, () -> assumed.calculation().get() + ", every window at its bad end");
        }
    }

    // a step down in size

    private StepDown stepDown(Run run, String near) {
        Link link = model.wiring.of(run);
        Shown<Double> ampacity = ampacities.of(run);
        if (near == null) {
            Shown<Boolean> unfed = Shown.missing(openFeed("the run that feeds " + run.id()));
            return new StepDown(run.path(), run.at(), unfed, unfed, unfed.map(x -> 0.0), unfed, null);
        }
        List<Link> back = feeds.back(near);
        Shown<Boolean> guardedBefore = Shown.of(false);
        for (Link before : back) {
            if (before.kind() == Link.Kind.FUSE) {
                guardedBefore = Kleene.or(guardedBefore, fits(before.ratingAmperes(), ampacity));
            }
        }
        Stretch stretch = toFuse(link, near, ampacity);
        Shown<Boolean> before = guardedBefore;
        Shown<Boolean> fused = Kleene.or(before, stretch.fused);
        Shown<Double> metres = before.then(yes -> yes ? Shown.of(0.0, () -> "the fuse before it fits") : stretch.metres);
        Shown<Boolean> sheathed = before.then(yes -> yes ? Shown.of(false) : stretch.sheathed);
        return new StepDown(run.path(), run.at(), smaller(run, back), fused, metres, sheathed, ladders.thicker(run));
    }

    private Shown<Boolean> smaller(Run run, List<Link> back) {
        for (Link before : back) {
            if (before.kind() == Link.Kind.RUN) {
                return isThinner(run, before.run());
            }
        }
        return Shown.of(true);
    }

    private Shown<Boolean> isThinner(Run run, Run than) {
        return run.size().with(than.size(), (mine, theirs) ->
                model.conductors().areaSquareMetres(mine) < model.conductors().areaSquareMetres(theirs) * (1 - 1e-9));
    }
}
