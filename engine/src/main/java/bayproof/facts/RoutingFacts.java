package bayproof.facts;

import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.HingeCrossing;
import bayproof.vocabulary.HoleInUse;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.LaidRun;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about how runs lie: support, bends, ties and labels, the hinges they cross and the holes they use. */
final class RoutingFacts {
    private final Model model;
    private final Ladders ladders;
    private final Hinges hinges;

    RoutingFacts(Model model) {
        this.model = model;
        this.ladders = new Ladders(model);
        this.hinges = new Hinges(model);
    }

    void collect(Consumer<Fact> facts) {
        Set<String> used = new TreeSet<>();
        for (Run run : model.job.runs().values()) {
            facts.accept(laid(run));
            if (!model.job.isFactory(run)) {
                facts.accept(hinges(run));
                used.addAll(run.through().orElse(List.of()));
            }
        }
        used.forEach(id -> facts.accept(hole(id)));
    }

    private LaidRun laid(Run run) {
        Shown<Double> share = run.bendMetres().with(run.diameterMetres(), Sums::share).then(value ->
                Shown.of(value, () -> Model.print(run.bendMetres().orElse(0.0), Dimension.LENGTH) + " / "
                        + Model.print(run.diameterMetres().orElse(0.0), Dimension.LENGTH)));
        return new LaidRun(run.path(), run.at(), Shown.of(!model.job.isFactory(run)), run.tiedTo(), run.supportMetres(), share,
                run.label(), ladders.smaller(run, "support", run.supportMetres()), ladders.larger(run, "bend", run.bendMetres()));
    }

    // hinges

    private HingeCrossing hinges(Run run) {
        Shown<Boolean> crosses = Shown.of(false);
        Shown<String> guard = null;
        Shown<Collection<String>> holes = model.body.holes(run);
        for (String id : holes.orElse(List.of())) {
            Vehicle.PassThrough hole = model.job.passThroughs().get(id);
            Shown<Boolean> hinged = hole == null ? Shown.missing(need(id, "hinge")) : hinges.crosses(hole);
            if (!Kleene.is(hinged, false)) {
                crosses = Kleene.or(crosses, hinged);
                guard = worse(guard, hole == null ? Shown.missing(need(id, "edge")) : hole.edge());
            }
        }
        if (!holes.isGiven()) {
            crosses = holes.map(none -> false);
        }
        return new HingeCrossing(run.path(), run.at(), crosses, guard != null ? guard : holes.map(none -> "none"),
                run.slackMetres(), ladders.larger(run, "slack", run.slackMetres()));
    }

    /** One that is no boot decides; then one nobody gave. */
    private Shown<String> worse(Shown<String> one, Shown<String> other) {
        if (one == null || other.isGiven() && !model.limit("hinge-boots").words().contains(other.orElse(""))) {
            return other;
        }
        boolean decided = one.isGiven() && !model.limit("hinge-boots").words().contains(one.orElse(""));
        return decided ? one : one.with(other, (kept, also) -> kept);
    }

    // holes

    private HoleInUse hole(String id) {
        Vehicle.PassThrough hole = model.job.passThroughs().get(id);
        if (hole == null) {
            Shown<Boolean> drilled = Shown.missing(need(id, "origin"));
            return new HoleInUse("pass-throughs." + id, model.job.planAt(), drilled, Shown.missing(need(id, "between")), Shown.of(""),
                    Shown.missing(need(id, "finish")), Shown.missing(need(id, "origin")), null);
        }
        Shown<Boolean> spare = Shown.of(false);
        List<String> spares = new ArrayList<>();
        for (Vehicle.PassThrough other : model.job.passThroughs().values()) {
            Shown<Boolean> same = other.id().equals(id) ? Shown.of(false)
                    : hole.between().with(other.between(), (one, two) -> new HashSet<>(one).equals(new HashSet<>(two)));
            Shown<Boolean> roomy = Kleene.and(same, Kleene.and(other.origin().map("factory"::equals), other.room().map("yes"::equals)));
            if (Kleene.is(roomy, true)) {
                spares.add(other.id());
            }
            spare = Kleene.or(spare, roomy);
        }
        return new HoleInUse(hole.path(), hole.at(), hole.origin().map("drilled"::equals), spare.map(has -> !has),
                Shown.of(String.join(", ", spares)), hole.finish(), hole.origin(),
                Ladders.knob(() -> model.limit("drilled-finish").words(), "pass-throughs", id, "finish"));
    }

    private Need need(String hole, String key) {
        return new Need("pass-throughs." + hole + "." + key, key + " of the pass-through " + hole, model.job.planAt());
    }
}
