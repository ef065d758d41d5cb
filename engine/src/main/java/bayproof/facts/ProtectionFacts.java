package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.Role;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.units.Dimension;
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
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Facts about what guards each live conductor. */
final class ProtectionFacts {
    private final Model model;
    private final FeedTree feeds;
    private final Ladders ladders;

    ProtectionFacts(Model model) {
        this.model = model;
        this.feeds = new FeedTree(model);
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
        List<Item.Battery> batteries = model.job.itemsOf(Item.Battery.class);
        for (Run run : feeds.runsFromPosts()) {
            Link link = model.wiring.of(run);
            String post = feeds.nearEnd(link);
            Stretch stretch = toFuse(link, post, null);
            facts.accept(new SourceRun(run.path(), run.at(), post.substring(0, post.indexOf('.')), SourceKind.BATTERY,
                    stretch.fused, stretch.metres, stretch.sheathed, ladders.shorter(run)));
            stretch.note(model, run.path() + ".length-to-fuse");
        }
        if (feeds.runsFromPosts().isEmpty() && needsFeed()) {
            String path = batteries.isEmpty() ? "supply.sources" : batteries.get(0).path();
            Shown<Boolean> missing = Shown.missing(batteries.isEmpty()
                    ? new Need("supply.sources", "the battery that feeds the job", model.job.planAt())
                    : openFeed("the run that leaves " + batteries.get(0).id() + ".positive"));
            facts.accept(new SourceRun(path, batteries.isEmpty() ? model.job.planAt() : batteries.get(0).at(),
                    batteries.isEmpty() ? "" : batteries.get(0).id(), SourceKind.BATTERY, missing, missing.map(x -> 0.0), missing, null));
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
        } else {
            here = before.with(model.lengthMetres(link.run()), Double::sum);
            stretch.metres = longest(stretch.metres, here);
            stretch.sheathed = Kleene.and(stretch.sheathed, model.sheathed(link.run()));
        }
        if (WiringGraph.isOpen(far)) {
            stretch.fused = Kleene.and(stretch.fused, (link.run().to().isGiven() ? link.run().from() : link.run().to()).map(end -> true));
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
                    : Shown.missing(assumed.windows().all().stream().map(window ->
                    new Need(window.path(), model.limit(window.limit()).says(), model.job.planAt())).toList()));
        }
        return rating.with(ampacity, (amperes, most) -> amperes <= share * most);
    }

    // fuse against conductor

    private GuardedRun guarded(Run run) {
        Link link = model.wiring.of(run);
        String near = feeds.nearEnd(link);
        Shown<Double> ampacity = ampacity(run);
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
            return new Shown.Assumed<>(rating / assumed.bad(), rating / assumed.good(), assumed.windows(),
                    () -> shareText(guard, rating, assumed.bad()));
        }
        return guard.ratingAmperes().with(ampacity, (rating, most) -> new double[] {rating, most}).then(pair ->
                Shown.of(pair[0] / pair[1], () -> shareText(guard, pair[0], pair[1])));
    }

    private static String shareText(Link guard, double rating, double ampacity) {
        return guard.id() + " " + Model.print(rating, Dimension.CURRENT) + " / ampacity " + Model.print(ampacity, Dimension.CURRENT);
    }

    /** The fuse that guards a run: the smallest before it, or the one straight behind it. */
    private Link guard(Link link, String near) {
        Link smallest = null;
        for (Link before : feeds.back(near)) {
            if (before.kind() == Link.Kind.FUSE && (smallest == null
                    || before.ratingAmperes().orElse(0.0) < smallest.ratingAmperes().orElse(0.0))) {
                smallest = before;
            }
        }
        if (smallest != null) {
            return smallest;
        }
        Link at = link;
        String from = near;
        Set<Link> seen = new HashSet<>();
        while (at != null && seen.add(at)) {
            List<Link> onward = feeds.onward(at, from);
            from = at.other(from);
            at = onward.size() == 1 ? onward.get(0) : null;
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

    /** Ampacity of a run where it lies; a window where nobody named its metal. */
    private Shown<Double> ampacity(Run run) {
        return run.size().with(model.insulationCelsius(run), (size, insulation) -> insulation)
                .with(model.ambientCelsius(run), (insulation, ambient) -> new double[] {insulation, ambient})
                .then(heat -> ampacity(run, heat[0], heat[1]));
    }

    private Shown<Double> ampacity(Run run, double insulationCelsius, double ambientCelsius) {
        String size = run.size().orElse("");
        OptionalDouble copper = model.conductors().ampacityAmperes(size, run.metal().orElse("copper"), insulationCelsius, ambientCelsius);
        if (copper.isEmpty()) {
            return new Shown.Collapsed<>("there is no published current for " + size + " with "
                    + Model.print(insulationCelsius, Dimension.TEMPERATURE) + " insulation");
        }
        Supplier<String> calculation = () -> size + ", " + run.metal().orElse("metal not named") + ", " + Model.print(insulationCelsius, Dimension.TEMPERATURE)
                + " insulation, hottest zone " + Model.print(ambientCelsius, Dimension.TEMPERATURE) + " (33 CFR 183.425 Table 5)";
        if (copper.getAsDouble() == 0) {
            return new Shown.Collapsed<>(run.id() + " may carry no current at all: the hottest zone it passes, "
                    + Model.print(ambientCelsius, Dimension.TEMPERATURE) + ", uses up its " + Model.print(insulationCelsius, Dimension.TEMPERATURE)
                    + " insulation");
        }
        if (run.metal().isGiven()) {
            return Shown.of(copper.getAsDouble(), calculation);
        }
        Corner bad = Corner.bad(model.job.limits(), Question.AMPACITY);
        Corner good = Corner.good(model.job.limits(), Question.AMPACITY);
        double low = copper.getAsDouble() * bad.window("clad-ampacity", run.path() + ".metal");
        double high = copper.getAsDouble() * good.window("clad-ampacity", run.path() + ".metal");
        return new Shown.Assumed<>(low, high, bayproof.vocabulary.Windows.unweighed(bad.windows()), calculation);
    }

    private void noteAmpacity(Run run, Shown<Double> ampacity) {
        if (ampacity instanceof Shown.Given<Double> given) {
            model.numbers.put(run.path() + ".ampacity", given.value(), Dimension.CURRENT, given.calculation());
        } else if (ampacity instanceof Shown.Assumed<Double> assumed) {
            model.numbers.put(run.path() + ".ampacity", assumed.bad(), Dimension.CURRENT, () -> assumed.calculation().get() + ", worst metal");
        }
    }

    // a step down in size

    private StepDown stepDown(Run run, String near) {
        Link link = model.wiring.of(run);
        Shown<Double> ampacity = ampacity(run);
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
                return run.size().with(before.run().size(), (mine, theirs) ->
                        model.conductors().areaSquareMetres(mine) < model.conductors().areaSquareMetres(theirs) * (1 - 1e-9));
            }
        }
        return Shown.of(true);
    }
}
