package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.KeepOutKind;
import bayproof.vocabulary.KeptClear;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.NearKeepOut;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about what planned runs, mounted items and ground screws keep away from: fuel, brake, exhaust, moving parts, the way of airbags and high voltage. */
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
        for (Item item : model.job.items().values()) {
            // What the vehicle maker mounted is not judged.
            if (item.fitting() != null && !item.path().startsWith("supply.")) {
                facts.accept(clear(item, KeptClear.ITEM, item.fitting().near(), KeepOutKind.RESTRAINT_PATH));
            } else if (item instanceof Item.GroundPoint point) {
                facts.accept(clear(item, KeptClear.GROUND, point.near(), KeepOutKind.FUEL));
            }
        }
    }

    private Shown<Boolean> onEngine(Shown<String> terminal) {
        return terminal.map(name -> model.job.itemOf(name) instanceof Item.Alternator);
    }

    private NearKeepOut near(Run run, Shown<Set<String>> zones, Shown<Boolean> moves, KeepOutKind kind) {
        Found found = look(run.path(), run.at(), "this run", zones, run.near(), kind);
        return new NearKeepOut(run.path(), run.at(), kind, found.here, moves, found.closest, found.all);
    }

    /** What is fastened to the vehicle lies in one zone, and keeps away from what lies there too. */
    private KeptClear clear(Item item, String what, Map<String, Shown<Double>> near, KeepOutKind kind) {
        Shown<Set<String>> zone = item.place().isGiven() ? model.body.zoneOf(Shown.of(item.id() + ".")).map(Set::of) : item.place().map(Set::of);
        Found found = look(item.path(), item.at(), item.id(), zone, near, kind);
        return new KeptClear(item.path(), item.at(), what, kind, found.here, found.closest, found.all);
    }

    /** How near a thing lies to anything of a kind. */
    private record Found(Shown<Boolean> here, Shown<Double> closest, Shown<Boolean> all) {
    }

    /** Something whose kind or zones nobody wrote counts wherever a distance to it is given or it could be passed. */
    private Found look(String path, At at, String noun, Shown<Set<String>> zones, Map<String, Shown<Double>> near, KeepOutKind kind) {
        Shown<Boolean> passes = Shown.of(false);
        Shown<Double> closest = null;
        List<Need> needs = new ArrayList<>();
        for (Vehicle.KeepOut keepOut : model.job.vehicle().keepOuts().values()) {
            if (Kleene.is(keepOut.fitted(), false)) {
                continue;
            }
            Shown<Double> given = near.get(keepOut.id());
            Shown<Double> distance = given != null ? given : Shown.missing(new Need(path + ".near." + keepOut.id(),
                    "clear distance from " + noun + " to " + keepOut.id(), at));
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
            Shown<Boolean> expected = expected(zones, kind, at);
            passes = Kleene.or(passes, expected);
            needs.addAll(expected.needs());
        }
        Shown<Boolean> all = needs.isEmpty() ? Shown.of(true) : Shown.missing(needs);
        return new Found(passes, closest != null ? closest : all.then(none -> Shown.missing(new Need(path + ".near",
                "clear distance to what is of the kind " + kind.word(), at))), all);
    }

    /** A thing that is fitted lies in at least one zone. */
    private static Shown<List<String>> zonesOf(Vehicle.KeepOut keepOut) {
        return keepOut.isThere().then(there -> keepOut.zones()).then(zones -> zones.isEmpty() ? Shown.missing(new Need(keepOut.path() + ".zones",
                "the zones in which " + keepOut.id() + " lies, or fitted: false", keepOut.zones().atOr(keepOut.at()))) : keepOut.zones());
    }

    private static boolean meet(Set<String> passed, List<String> zones) {
        return zones.stream().anyMatch(passed::contains);
    }

    private boolean isUnheardOf(KeepOutKind kind) {
        return model.job.vehicle().keepOuts().values().stream().noneMatch(one -> one.kind().orElse("").equals(kind.word()));
    }

    /** A sheet that never speaks of the kind has not been asked: it is missing where a run passes a zone that usually has it. */
    private Shown<Boolean> expected(Shown<Set<String>> passed, KeepOutKind kind, At at) {
        List<String> usual = model.limit("zones-with-" + kind.word()).words();
        Need sheet = new Need("keep-outs", "where the vehicle has something of the kind " + kind.word() + "; fitted: false if nowhere", at);
        return passed.then(ids -> {
            Shown<Boolean> any = Shown.of(false);
            for (String id : ids) {
                any = Kleene.or(any, id.isEmpty() ? Shown.of(false) : model.zoneKind(id, at).map(usual::contains));
            }
            return any;
        }).then(usually -> usually ? Shown.missing(sheet) : Shown.of(false));
    }
}
