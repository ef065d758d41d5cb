package bayproof.facts;

import bayproof.read.FactoryFunction;
import bayproof.read.Item;
import bayproof.read.Mount;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Tells whether a job has anything of a kind that an inspection looks at. */
final class InspectedThings {
    private static final String ENGINE_BAY = "engine-bay";

    private final Model model;
    private final Plan plan;
    private final Map<String, Shown<Boolean>> known = new HashMap<>();

    InspectedThings(Model model) {
        this.model = model;
        this.plan = model.job.plan();
    }

    /**
     * Whether the job has such things.
     *
     * @param things the word that the table of inspections uses
     * @throws IllegalStateException for a word nobody knows, which is a mistake in that table
     */
    Shown<Boolean> there(String things) {
        Shown<Boolean> there = known.get(things);
        if (there == null) {
            there = find(things);
            known.put(things, there);
        }
        return there;
    }

    private Shown<Boolean> find(String things) {
        return switch (things) {
            case "the-job" -> Shown.of(true);
            case "steps" -> Shown.of(!plan.steps().isEmpty());
            case "runs" -> Shown.of(!plan.runs().isEmpty());
            case "power-runs" -> runs(run -> Shown.of(model.wiring.role(run).isPower()));
            case "power-and-signal" -> Kleene.and(there("power-runs"), there("signal-runs"));
            case "signal-runs" -> runs(run -> Shown.of(isSignal(run)));
            case "runs-through-holes" -> holes(hole -> Shown.of(true));
            case "runs-at-hinges" -> holes(new Hinges(model)::crosses);
            case "runs-near-bags" -> runs(run -> near(run, "restraint-path"));
            case "runs-near-moving-parts" -> runs(run -> near(run, "moving"));
            case "runs-in-the-cabin" -> runs(run -> passes(run, Set.of("cabin-front", "cabin-rear")));
            case "power-runs-in-the-engine-bay" -> runs(run -> model.wiring.role(run).isPower() ? passes(run, Set.of(ENGINE_BAY)) : Shown.of(false));
            case "runs-under-the-floor" -> runs(run -> passes(run, Set.of("underbody")));
            case "runs-where-wet" -> runs(run -> passes(run, model.limit("wet-zones").words()));
            case "runs-into-doors" -> runs(run -> passes(run, model.limit("zones-on-hinges").words()));
            case "crimped-ends" -> ends(end -> end.method().map(model.limit("crimp-methods").words()::contains));
            case "clamped-ends" -> ends(end -> end.method().map(method -> !method.equals("solder")));
            case "made-ends" -> runs(run -> Shown.of(model.wiring.role(run).isPower()));
            case "stud-ends" -> runs(run -> Kleene.or(onStud(run.from()), onStud(run.to())));
            case "joined-pins" -> Shown.of(!plan.pins().isEmpty());
            case "soldered-taps" -> any(plan.pins().values(), pin -> pin.method().map("tap-solder"::equals));
            case "tapped-pins" -> any(plan.pins().values(), pin -> pin.method().map(method -> method.startsWith("tap-") || method.startsWith("cut-")));
            case "crimped-taps" -> any(plan.pins().values(), pin -> pin.method().map("tap-crimp"::equals));
            case "cut-pins" -> any(plan.pins().values(), pin -> pin.method().map("cut-and-join"::equals));
            case "speaker-pins" -> any(plan.pins().values(), pin -> pin.function().map("speaker"::equals));
            case "wake-lines" -> runs(run -> Shown.of(ends(run, "turn-on") || ends(run, "wake")));
            case "optical-buses" -> any(model.job.vehicle().networks().values(), bus -> bus.kind().map("optical"::equals));
            case "joined-buses" -> plan.buses().map(buses -> !buses.isEmpty());
            case "drilled-holes" -> holes(hole -> hole.origin().map("drilled"::equals));
            case "firewall-holes" -> holes(this::throughFirewall);
            case "holes-from-outside" -> holes(this::fromOutside);
            case "drilled-mounts" -> mounts(mount -> mount.fastener().map(model.limit("fasteners-that-drill").words()::contains));
            case "drilling" -> Kleene.or(there("drilled-holes"), there("drilled-mounts"));
            case "screwed-mounts" -> mounts(mount -> mount.fastener().map(kind -> !model.limit("holeless-fasteners").words().contains(kind)));
            case "heavy-parts" -> items(item -> massOf(item).map(kilograms -> kilograms > model.value("heavy-part")));
            case "interfaces" -> items(item -> Shown.of(item instanceof Item.Interface));
            case "amplifiers" -> items(item -> Shown.of(item instanceof Item.Amplifier));
            case "accessories" -> items(item -> Shown.of(item instanceof Item.Accessory));
            case "enclosures" -> items(item -> Shown.of(item instanceof Item.Enclosure));
            case "devices-where-wet" -> items(item -> item instanceof Item.Powered || item instanceof Item.Fuse || item instanceof Item.FuseBlock
                    || item instanceof Item.Joint ? inZone(item, model.limit("wet-zones").words()) : Shown.of(false));
            case "things-in-the-cabin" -> items(item -> item instanceof Item.Powered || item instanceof Item.Enclosure || item instanceof Item.Converter
                    ? inZone(item, Set.of("cabin-front", "cabin-rear", "dash")) : Shown.of(false));
            case "ground-points" -> items(item -> Shown.of(item instanceof Item.GroundPoint));
            case "audio-items" -> items(item -> Shown.of(item instanceof Item.Amplifier || item instanceof Item.Processor));
            case "devices" -> items(item -> Shown.of(item instanceof Item.Powered || item instanceof Item.Converter));
            case "speakers" -> items(item -> Shown.of(item instanceof Item.Speaker));
            case "cargo-speakers" -> items(item -> item instanceof Item.Speaker ? inZone(item, Set.of("cargo", "cabin-rear")) : Shown.of(false));
            case "door-speakers" -> items(item -> item instanceof Item.Speaker ? inZone(item, model.limit("zones-on-hinges").words()) : Shown.of(false));
            case "boxes-and-devices" -> Kleene.or(there("enclosures"), there("devices"));
            case "added-batteries" -> items(item -> Shown.of(item instanceof Item.Battery));
            case "lithium-batteries" -> items(item -> item instanceof Item.Battery battery ? battery.chemistry().map("lithium"::equals) : Shown.of(false));
            case "boxed-batteries" -> items(item -> item instanceof Item.Battery battery ? battery.vent().map("vented-box"::equals) : Shown.of(false));
            case "fuse-holders" -> items(item -> Shown.of(item instanceof Item.Fuse || item instanceof Item.FuseBlock));
            case "left-ends" -> Kleene.or(plan.keptParts().map(parts -> !parts.isEmpty()), plan.found().map(found ->
                    found.values().stream().anyMatch(one -> Set.of("remove", "make-safe").contains(one.decision().orElse("remove")))));
            case "high-voltage" -> any(model.job.vehicle().keepOuts().values(), one -> Kleene.and(one.isThere(), one.kind().map("high-voltage"::equals)));
            case "cabin-sound" -> Kleene.or(model.job.vehicle().cabinSound().cancelsNoise(), model.job.vehicle().cabinSound().addsEngineSound());
            case "pedestrian-sound" -> model.job.vehicle().cabinSound().pedestrianSound();
            default -> ofAKind(things);
        };
    }

    /** {@code step:fit} looks at what the steps of that kind left behind, {@code function:camera} at a function of the vehicle. */
    private Shown<Boolean> ofAKind(String things) {
        String kind = things.substring(things.indexOf(':') + 1);
        if (things.startsWith("step:")) {
            return any(plan.steps().values(), step -> step.does().map(kind::equals));
        }
        if (!things.startsWith("function:")) {
            throw new IllegalStateException("no inspection looks at \"" + things + "\"");
        }
        FactoryFunction function = plan.functions().get(kind);
        return function == null ? Shown.missing(new Need("functions." + kind + ".before", "whether the vehicle has this function: " + kind, model.job.planAt()))
                : function.before().map(before -> !before.equals("not-fitted"));
    }

    // runs

    private Shown<Boolean> runs(Function<Run, Shown<Boolean>> test) {
        return any(plan.runs().values(), test);
    }

    private Shown<Boolean> ends(Function<Run.End, Shown<Boolean>> test) {
        return runs(run -> model.wiring.role(run).isPower() ? Kleene.or(test.apply(run.ends().from()), test.apply(run.ends().to())) : Shown.of(false));
    }

    private boolean isSignal(Run run) {
        return !model.wiring.role(run).isPower() && (signal(run.from()) || signal(run.to()));
    }

    private static boolean signal(Shown<String> terminal) {
        String name = terminal.orElse("");
        String last = name.substring(name.indexOf('.') + 1);
        return last.startsWith("signal-") || last.startsWith("out-");
    }

    private Shown<Boolean> onStud(Shown<String> terminal) {
        return terminal.then(name -> {
            Item item = model.job.itemOf(name);
            return item == null || item.studs() == null ? Shown.of(false)
                    : item.studs().of(name.substring(name.indexOf('.') + 1)).map(stud -> stud.startsWith("M"));
        });
    }

    private Shown<Boolean> near(Run run, String kind) {
        return any(run.near().keySet(), id -> {
            Vehicle.KeepOut keepOut = model.job.vehicle().keepOuts().get(id);
            return keepOut == null ? Shown.of(false) : keepOut.kind().map(kind::equals);
        });
    }

    private static boolean ends(Run run, String terminal) {
        return run.from().orElse("").endsWith("." + terminal) || run.to().orElse("").endsWith("." + terminal);
    }

    private Shown<Boolean> passes(Run run, Collection<String> kinds) {
        return model.body.zonesPassed(run).then(zones -> any(zones, id -> zoneKind(id).map(kinds::contains)));
    }

    // holes

    private Shown<Boolean> holes(Function<Vehicle.PassThrough, Shown<Boolean>> test) {
        return runs(run -> run.through().then(names -> any(names, name -> {
            Vehicle.PassThrough hole = model.job.passThroughs().get(name);
            return hole == null ? Shown.of(false) : test.apply(hole);
        })));
    }

    private Shown<Boolean> throughFirewall(Vehicle.PassThrough hole) {
        return hole.between().then(zones -> Kleene.and(any(zones, id -> zoneKind(id).map(ENGINE_BAY::equals)),
                any(zones, id -> zoneKind(id).map(kind -> !kind.equals(ENGINE_BAY)))));
    }

    private Shown<Boolean> fromOutside(Vehicle.PassThrough hole) {
        List<String> wet = model.limit("wet-zones").words();
        return hole.between().then(zones -> Kleene.and(any(zones, id -> zoneKind(id).map(wet::contains)),
                any(zones, id -> zoneKind(id).map(kind -> !wet.contains(kind)))));
    }

    // items, mounts, pins

    private Shown<Boolean> items(Function<Item, Shown<Boolean>> test) {
        return any(model.job.items().values(), item -> item.path().startsWith("supply.") ? Shown.of(false) : test.apply(item));
    }

    private Shown<Boolean> mounts(Function<Mount, Shown<Boolean>> test) {
        return items(item -> item.mount() == null ? Shown.of(false) : test.apply(item.mount()));
    }

    private static Shown<Double> massOf(Item item) {
        return item.fitting() == null ? Shown.of(0.0) : item.fitting().massKilograms();
    }

    private Shown<Boolean> inZone(Item item, Collection<String> kinds) {
        return model.zoneKind(item).map(kinds::contains);
    }

    /** An end at the body has no zone of its own. */
    private Shown<String> zoneKind(String id) {
        return id.isEmpty() ? Shown.of("") : model.zoneKind(id, model.job.planAt());
    }

    private static <T> Shown<Boolean> any(Collection<T> things, Function<? super T, Shown<Boolean>> test) {
        Shown<Boolean> any = Shown.of(false);
        for (T thing : things) {
            any = Kleene.or(any, test.apply(thing));
            if (Kleene.is(any, true)) {
                return any;
            }
        }
        return any;
    }
}
