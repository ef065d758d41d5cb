package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FuseLoad;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.LoadedRun;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Facts about the current in each fuse and conductor, held against what it is made for. */
final class CurrentFacts {
    private final Model model;
    private final LinkCurrents currents;
    private final Ampacities ampacities;
    private final Ladders ladders;

    CurrentFacts(Model model, SolvedNetworks networks) {
        this.model = model;
        this.currents = new LinkCurrents(model, networks);
        this.ampacities = new Ampacities(model);
        this.ladders = new Ladders(model);
    }

    void collect(Consumer<Fact> facts) {
        judged().forEach(link -> facts.accept(link.kind() == Link.Kind.FUSE ? fuse(link) : run(link)));
    }

    /** The fuses in use, and the conductors for power that the vehicle maker did not lay. */
    List<Link> judged() {
        return model.wiring.links().stream().filter(link -> link.kind() == Link.Kind.FUSE ? inUse(link)
                : link.kind() == Link.Kind.RUN && !model.job.isFactory(link.run()) && model.wiring.role(link.run()).isPower()).toList();
    }

    /** A fuse in a holder always counts, an outlet of a block once something hangs on it. */
    private boolean inUse(Link fuse) {
        return fuse.item() instanceof Item.Fuse || model.wiring.at(fuse.to()).size() > 1;
    }

    private FuseLoad fuse(Link link) {
        int dot = link.id().indexOf('.');
        String subject = link.item().path() + (dot < 0 ? "" : ".fuses" + link.id().substring(dot));
        Knob larger = link.ratingAmperes().isGiven() ? ladders.stronger(link.id(), link.ratingAmperes().orElse(0.0)) : null;
        return new FuseLoad(subject, link.ratingAmperes().atOr(link.item().at()), share(subject, link, Level.LOUD_PROGRAMME, link.ratingAmperes(), "rating"),
                share(subject, link, Level.FULL_SINE, link.ratingAmperes(), "rating"), larger);
    }

    private LoadedRun run(Link link) {
        Run run = link.run();
        return new LoadedRun(run.path(), run.at(), share(run.path(), link, Level.FULL_SINE, ampacities.of(run), "ampacity"), ladders.thicker(run));
    }

    private Shown<Double> share(String path, Link link, Level level, Shown<Double> base, String word) {
        Shown<Double> amperes = currents.of(link, level);
        String words = level.words().replace(' ', '-');
        note(path + ".current-" + words, amperes, Dimension.CURRENT);
        Shown<Double> share = share(amperes, base, word);
        note(path + ".share-of-" + word + "-" + words, share, Dimension.RATIO);
        return share;
    }

    private void note(String path, Shown<Double> value, Dimension dimension) {
        if (value instanceof Shown.Given<Double> given) {
            model.numbers.put(path, given.value(), dimension, given.calculation());
        } else if (value instanceof Shown.Assumed<Double> assumed && assumed.bad() != null) {
            model.numbers.put(path, assumed.bad(), dimension, () -> assumed.calculation().get() + ", every window at its bad end");
        }
    }

    private static Shown<Double> share(Shown<Double> amperes, Shown<Double> base, String word) {
        Set<Need> needs = new LinkedHashSet<>(base.needs());
        needs.addAll(amperes.needs());
        if (!needs.isEmpty()) {
            return Shown.missing(List.copyOf(needs));
        }
        if (base instanceof Shown.Collapsed || amperes instanceof Shown.Collapsed) {
            return base instanceof Shown.Collapsed ? base : amperes;
        }
        Ends current = Ends.of(amperes);
        Ends most = Ends.of(base);
        Supplier<String> working = () -> current.bad == null ? current.working.get()
                : current.working.get() + " / " + word + " " + Model.print(most.bad, Dimension.CURRENT);
        if (current.windows == null && most.windows == null) {
            return Shown.of(Sums.share(current.bad, most.bad), working);
        }
        double reference = current.bad == null ? current.good : current.bad;
        List<Window> ofBase = most.windows == null ? List.of() : most.windows.all().stream()
                .map(window -> window.weighing(Math.abs(reference / most.bad - reference / most.good))).toList();
        Windows ofCurrent = current.windows == null ? Windows.unweighed(List.of()) : current.windows;
        return new Shown.Assumed<>(current.bad == null ? null : Sums.share(current.bad, most.bad), Sums.share(current.good, most.good),
                new SharedWindows(ofCurrent, 1 / most.bad, ofBase), working);
    }

    /** Both ends of a value, the same where it was given. */
    private record Ends(Double bad, double good, Windows windows, Supplier<String> working) {
        static Ends of(Shown<Double> value) {
            if (value instanceof Shown.Given<Double> given) {
                return new Ends(given.value(), given.value(), null, given.calculation());
            }
            Shown.Assumed<Double> assumed = (Shown.Assumed<Double>) value;
            return new Ends(assumed.bad(), assumed.good(), assumed.windows(), assumed.calculation());
        }
    }
}
