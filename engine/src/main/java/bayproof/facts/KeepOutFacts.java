package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.KeepOutKind;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.NearKeepOut;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about what the planned runs keep away from: fuel, brake, exhaust, moving parts, the way of airbags and high voltage. */
final class KeepOutFacts {
    private final Model model;

    KeepOutFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        for (Run run : model.job.runs().values()) {
            if (!model.job.isFactory(run)) {
                Shown<Set<String>> zones = model.body.zonesOnKnownWay(run);
                Shown<Boolean> moves = Kleene.or(onEngine(run.from()), onEngine(run.to()));
                for (KeepOutKind kind : KeepOutKind.values()) {
                    facts.accept(near(run, zones, moves, kind));
                }
            }
        }
    }

    private Shown<Boolean> onEngine(Shown<String> terminal) {
        return terminal.map(name -> model.job.itemOf(name) instanceof Item.Alternator);
    }

    /** Something whose kind or zones nobody wrote counts wherever a distance to it is given or it could be passed. */
    private NearKeepOut near(Run run, Shown<Set<String>> zones, Shown<Boolean> moves, KeepOutKind kind) {
        Shown<Boolean> passes = Shown.of(false);
        Shown<Double> closest = null;
        List<Need> needs = new ArrayList<>();
        for (Vehicle.KeepOut keepOut : model.job.vehicle().keepOuts().values()) {
            if (Kleene.is(keepOut.fitted(), false)) {
                continue;
            }
            Shown<Double> distance = distance(run, keepOut);
            Shown<Boolean> here = Kleene.and(keepOut.kind().map(kind.word()::equals),
                    distance.isGiven() ? Shown.of(true) : zones.with(zonesOf(keepOut), KeepOutFacts::meet));
            if (Kleene.is(here, false)) {
                continue;
            }
            passes = Kleene.or(passes, here);
            if (distance.isGiven()) {
                closest = closest == null ? distance : closest.with(distance, Math::min);
            } else {
                needs.addAll(distance.needs());
            }
        }
        if (isUnheardOf(kind)) {
            Shown<Boolean> expected = expected(zones, kind, run);
            passes = Kleene.or(passes, expected);
            needs.addAll(expected.needs());
        }
        Shown<Boolean> all = needs.isEmpty() ? Shown.of(true) : Shown.missing(needs);
        return new NearKeepOut(run.path(), run.at(), kind, passes, moves,
                closest != null ? closest : all.then(none -> Shown.missing(nearest(run, kind))), all);
    }

    /** A thing that is fitted lies in at least one zone. */
    private static Shown<List<String>> zonesOf(Vehicle.KeepOut keepOut) {
        return keepOut.zones().then(zones -> zones.isEmpty() ? Shown.missing(new Need(keepOut.path() + ".zones",
                "the zones in which " + keepOut.id() + " lies, or fitted: false", keepOut.zones().atOr(keepOut.at()))) : keepOut.zones());
    }

    private static boolean meet(Set<String> passed, List<String> zones) {
        return zones.stream().anyMatch(passed::contains);
    }

    private static Need nearest(Run run, KeepOutKind kind) {
        return new Need(run.path() + ".near", "clear distance to what is of the kind " + kind.word(), run.at());
    }

    private static Shown<Double> distance(Run run, Vehicle.KeepOut keepOut) {
        Shown<Double> given = run.near().get(keepOut.id());
        return given != null ? given : Shown.missing(new Need(run.path() + ".near." + keepOut.id(),
                "clear distance from this run to " + keepOut.id(), run.at()));
    }

    private boolean isUnheardOf(KeepOutKind kind) {
        return model.job.vehicle().keepOuts().values().stream().noneMatch(one -> one.kind().orElse("").equals(kind.word()));
    }

    /** A sheet that never speaks of the kind has not been asked: it is missing where a run passes a zone that usually has it. */
    private Shown<Boolean> expected(Shown<Set<String>> passed, KeepOutKind kind, Run run) {
        List<String> usual = model.limit("zones-with-" + kind.word()).words();
        Need sheet = new Need("keep-outs", "where the vehicle has something of the kind " + kind.word() + "; fitted: false if nowhere", run.at());
        return passed.then(ids -> {
            Shown<Boolean> any = Shown.of(false);
            for (String id : ids) {
                any = Kleene.or(any, id.isEmpty() ? Shown.of(false) : model.zoneKind(id, run.at()).map(usual::contains));
            }
            return any;
        }).then(usually -> usually ? Shown.missing(sheet) : Shown.of(false));
    }
}
