package bayproof.refit;

import bayproof.demand.Demand;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.AudioInput;
import bayproof.read.Choices;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.MergePatch;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Vehicle;
import bayproof.review.Evaluation;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Shown;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The old plan rewritten for the new vehicle. What belongs to the system moves; what was true of the old vehicle is left out, and
 * nothing takes its place that the new sheet, a measured route or the choices do not say.
 */
final class NewPlan {
    /** What belongs to the system, the shop and the work; everything else was said of the old vehicle or its owner and is left out. */
    private static final List<String> MOVES = List.of("bayproof", "job", "vehicle", "parts", "limits", "parked", "signal-ground", "shop-tools", "colors",
            "calibrated-until", "items", "runs", "speaker-wiring", "settings", "pins", "pass-throughs", "buses", "audio-inputs", "steps");
    private static final String BUSES = "buses";
    /** Groups whose entries bear names of the vehicle. */
    private static final List<String> RENAMED = List.of("pins", "pass-throughs", BUSES, "near");

    private final Evaluation before;
    private final Job old;
    private final Job into;
    private final Counterparts counterparts;
    private final RunWays ways;
    private final PinMoves pins;
    private final Choices choices;
    /** The new sheet as it is written: what is taken from it keeps its spelling. */
    private final MapTree sheet;

    NewPlan(Evaluation before, Job into, MapTree sheet, Counterparts counterparts, RunWays ways, PinMoves pins, Choices choices) {
        this.before = before;
        this.old = before.job();
        this.into = into;
        this.counterparts = counterparts;
        this.ways = ways;
        this.pins = pins;
        this.choices = choices;
        this.sheet = sheet;
    }

    /** The plan, to be judged on the new vehicle. */
    MapTree tree() {
        MapTree plan = before.files().tree("plan");
        for (String key : before.files().tree("plan").entries().keySet()) {
            plan = MOVES.contains(key) ? plan : plan.without(key);
        }
        plan = plan.with("job", head(Trees.map(plan.get("job"))));
        plan = each(plan, "items", this::item);
        plan = each(plan, "runs", this::run);
        plan = each(plan, "speaker-wiring", (id, wiring) -> Trees.without(wiring, "resistance", "to-body", "dc"));
        plan = each(plan, "settings", (id, setting) -> setting.get("gain") instanceof MapTree gain ? setting.with("gain", gain.without("measured")) : setting);
        plan = each(plan, "steps", (id, step) -> Trees.without(step, "sound-level", "waited", "done"));
        plan = each(plan, "audio-inputs", this::input);
        plan = plan.get("pins") == null ? plan : plan.with("pins", pins.tree(Trees.map(plan.get("pins"))));
        plan = holes(plan);
        plan = buses(plan);
        plan = withoutFaults(plan);
        return choices.known() == null ? plan : MergePatch.apply(plan, choices.known());
    }

    /** What rewrites one entry of a group. */
    private interface Rewriting {
        MapTree of(String id, MapTree entry);
    }

    private static MapTree each(MapTree plan, String group, Rewriting rewriting) {
        if (!(plan.get(group) instanceof MapTree map)) {
            return plan;
        }
        MapTree moved = map;
        for (Entry entry : map.entries().values()) {
            if (entry.value() instanceof MapTree inner) {
                moved = moved.with(entry.key(), rewriting.of(entry.key(), inner));
            }
        }
        return plan.with(group, moved);
    }

    private MapTree head(MapTree head) {
        MapTree moved = Trees.without(head, "tag", "date", "prepared-by");
        Shown<Double> booked = choices.decided().bookedSeconds();
        return booked.isGiven() ? moved.with("booked", Trees.word(Units.print(booked.orElse(0.0), Dimension.TIME))) : moved;
    }

    // items

    private MapTree item(String id, MapTree entry) {
        MapTree moved = Trees.without(entry, "place", "space", "clearance", "body-return", "seen-on", "under-load", "charging");
        Item item = old.items().get(id);
        Counterpart place = counterparts.place(item.place().orElse(""));
        Vehicle.Place there = place == null || !place.isFound() ? null : into.vehicle().places().get(place.found());
        if (there != null) {
            moved = moved.with("place", Trees.word(there.id()));
        }
        if (item instanceof Item.Enclosure box) {
            Counterpart space = counterparts.space(box.space().orElse(""));
            moved = space == null || !space.isFound() ? moved : moved.with("space", Trees.word(space.found()));
        }
        if (item instanceof Item.GroundPoint) {
            moved = ground(Trees.without(moved, "structure", "fastener", "shares"), there);
        }
        if (entry.get("clearance") != null && there != null) {
            moved = copied(moved, "clearance", there.clearanceMetres(), place(there.id(), "clearance"));
        }
        return entry.get("mount") instanceof MapTree mount ? moved.with("mount", mount(mount, there)) : moved;
    }

    private MapTree ground(MapTree entry, Vehicle.Place there) {
        if (there == null) {
            return entry;
        }
        MapTree moved = copied(entry, "structure", there.ground().structure(), place(there.id(), "ground", "structure"));
        moved = copied(moved, "fastener", there.ground().fastener(), place(there.id(), "ground", "fastener"));
        moved = copied(moved, "body-return", there.ground().bodyReturnOhms(), place(there.id(), "ground", "body-return"));
        return copied(moved, "shares", there.ground().shares(), place(there.id(), "ground", "shares"));
    }

    private MapTree mount(MapTree mount, Vehicle.Place there) {
        MapTree moved = Trees.without(mount, "free-depth", "behind", "seen-by", "seen-on");
        if (there == null) {
            return moved;
        }
        moved = copied(moved, "free-depth", there.freeDepthMetres(), place(there.id(), "free-depth"));
        moved = copied(moved, "behind", there.behind(), place(there.id(), "behind"));
        return copied(moved, "seen-by", there.seenBy(), place(there.id(), "seen-by"));
    }

    /** With what the new sheet says, in the spelling of that sheet. */
    private static MapTree copied(MapTree entry, String key, Shown<?> said, Tree spelled) {
        return said instanceof Shown.Missing || spelled == null ? entry : entry.with(key, spelled);
    }

    private Tree place(String id, String... keys) {
        Tree here = Trees.map(sheet.get("places")).get(id);
        for (String key : keys) {
            here = Trees.map(here).get(key);
        }
        return here;
    }

    // runs

    private MapTree run(String id, MapTree entry) {
        MapTree moved = Trees.without(entry, "along", "through", "near");
        RunWays.Laid laid = ways.of(id);
        moved = end(end(moved, "from"), "to");
        if (laid.inOnePlace()) {
            // What lies within one place moves as it is, and so does its cable.
            return boxHoles(id).isEmpty() ? entry.get("through") == null ? moved : moved.with("through", Trees.list(List.of())) : moved.with("through", Trees.list(boxHoles(id)));
        }
        moved = moved.without("length");
        if (laid.way() == null) {
            Set<String> through = counterpartHoles(id);
            return through == null ? moved : moved.with("through", Trees.list(through));
        }
        Set<String> holes = new LinkedHashSet<>(laid.way().holes());
        holes.addAll(boxHoles(id));
        moved = moved.with("along", Trees.list(laid.way().routes())).with("through", Trees.list(holes));
        return moved.with("near", near(laid.way()));
    }

    private MapTree end(MapTree entry, String key) {
        String terminal = Trees.text(entry.get(key));
        String moved = terminal(terminal);
        return terminal.isEmpty() || terminal.equals(moved) ? entry : moved == null ? entry.without(key) : entry.with(key, Trees.word(moved));
    }

    /** A terminal under its name in the new vehicle; null where what it belongs to has no counterpart. */
    private String terminal(String terminal) {
        int dot = terminal.indexOf('.');
        if (dot < 0) {
            return terminal;
        }
        String owner = terminal.substring(0, dot);
        Counterpart found = counterparts.source(owner) != null ? counterparts.source(owner)
                : old.items().containsKey(owner) ? null : counterparts.output(owner);
        return found == null ? terminal : found.isFound() ? found.found() + terminal.substring(dot) : null;
    }

    /** Holes of boxes that the run goes through: they move with the box. */
    private List<String> boxHoles(String run) {
        return old.plan().runs().get(run).through().orElse(List.of()).stream().filter(counterparts::isOfBox).map(counterparts::hole)
                .filter(Counterpart::isFound).map(Counterpart::found).toList();
    }

    /** What stands for every hole of a run, where all of them have a counterpart; null where one has none or nobody wrote them. */
    private Set<String> counterpartHoles(String run) {
        Shown<List<String>> through = old.plan().runs().get(run).through();
        if (!through.isGiven() || through.orElse(List.of()).stream().anyMatch(hole -> !counterparts.hole(hole).isFound())) {
            return null;
        }
        Set<String> holes = new LinkedHashSet<>();
        through.orElse(List.of()).forEach(hole -> holes.add(counterparts.hole(hole).found()));
        return holes;
    }

    /** The least distance to each keep-out that a route of the way gives. */
    private MapTree near(Ways.Way way) {
        Map<String, Tree> nearest = new LinkedHashMap<>();
        Map<String, Double> metres = new LinkedHashMap<>();
        for (String id : way.routes()) {
            into.vehicle().routes().get(id).near().forEach((keepOut, distance) -> {
                double here = distance.orElse(Double.POSITIVE_INFINITY);
                if (distance.isGiven() && here < metres.getOrDefault(keepOut, Double.POSITIVE_INFINITY)) {
                    metres.put(keepOut, here);
                    nearest.put(keepOut, Trees.map(Trees.map(Trees.map(sheet.get("routes")).get(id)).get("near")).get(keepOut));
                }
            });
        }
        return Trees.group(nearest);
    }

    // signals, holes, buses

    private MapTree input(String id, MapTree entry) {
        MapTree moved = Trees.without(entry, "set-at-volume", "sum-gain");
        List<String> of = old.plan().audioInputs().get(id).of().orElse(List.of());
        if ("this-output".equals(Trees.text(moved.get("settings-made-on")))) {
            String made = madeOn(old.plan().audioInputs().get(id));
            moved = made == null ? moved.without("settings-made-on") : moved.with("settings-made-on", Trees.word(made));
        }
        boolean all = of.stream().allMatch(output -> counterparts.output(output) != null && counterparts.output(output).isFound());
        return all ? moved.with("of", Trees.list(of.stream().map(output -> counterparts.output(output).found()).toList())) : moved.without("of");
    }

    /** What kind of signal settings were made on that were made on the old vehicle's outputs; null where nobody said. */
    private String madeOn(AudioInput channel) {
        if (old.items().get(channel.correctedBy().orElse("")) instanceof Item.Processor) {
            return "flat";
        }
        List<Shown<Boolean>> shaped = channel.of().orElse(List.of()).stream().map(output -> old.vehicle().outputs().get(output).audio().shaped()).toList();
        return shaped.stream().anyMatch(one -> Kleene.is(one, true)) ? "shaped"
                : !shaped.isEmpty() && shaped.stream().allMatch(one -> Kleene.is(one, false)) ? "flat" : null;
    }

    private MapTree holes(MapTree plan) {
        MapTree work = Trees.map(plan.get("pass-throughs"));
        Map<String, Tree> moved = new LinkedHashMap<>();
        for (Entry hole : work.entries().values()) {
            Counterpart found = counterparts.hole(hole.key());
            if (found != null && found.isFound() && hole.value() instanceof MapTree done) {
                MapTree there = Trees.map(Trees.map(sheet.get("pass-throughs")).get(found.found()));
                // Where the hole comes from and what fills it is the vehicle's; how its edge is guarded is the job's.
                MapTree kept = counterparts.isOfBox(hole.key()) ? done : Trees.without(done, "origin", "room");
                for (String key : there.entries().keySet()) {
                    kept = kept.without(key);
                }
                moved.put(found.found(), "factory".equals(Trees.text(there.get("origin"))) ? kept.without("finish") : kept);
            }
        }
        return moved.isEmpty() ? plan.without("pass-throughs") : plan.with("pass-throughs", Trees.group(moved));
    }

    private MapTree buses(MapTree plan) {
        if (!(plan.get(BUSES) instanceof MapTree buses)) {
            return plan;
        }
        Map<String, Tree> moved = new LinkedHashMap<>();
        for (Entry bus : buses.entries().values()) {
            Counterpart found = counterparts.network(bus.key());
            if (found != null && found.isFound()) {
                moved.put(found.found(), bus.value());
            }
        }
        return moved.isEmpty() ? plan.without(BUSES) : plan.with(BUSES, Trees.group(moved));
    }

    /** The old job's own faults are not copied: the planned value that breaks a rule there is left open here. */
    private MapTree withoutFaults(MapTree plan) {
        MapTree less = plan;
        for (Verdict verdict : before.judgment().of(Outcome.BROKEN)) {
            for (Demand.Way way : verdict.ways()) {
                if (way.knob() != null && way.knob().file().equals("plan")) {
                    List<String> path = way.knob().path();
                    Counterpart hole = path.get(0).equals("pass-throughs") ? counterparts.hole(path.get(1)) : null;
                    less = Trees.without(less, hole == null || !hole.isFound() ? path : List.of(path.get(0), hole.found(), path.get(2)));
                }
            }
        }
        return less;
    }

    /** With {@code unknown} wherever the old plan said something that nothing stands for now; names that only one of both has stay as they are. */
    static MapTree withUnknowns(MapTree was, MapTree is) {
        MapTree filled = is;
        for (Entry entry : was.entries().values()) {
            Tree now = is.get(entry.key());
            if (now == null && (!RENAMED.contains(entry.key()) || entry.key().equals(BUSES)) && !entry.key().equals("part")) {
                filled = filled.with(entry.key(), Trees.word(Trees.UNKNOWN));
            } else if (entry.value() instanceof MapTree before && now instanceof MapTree after && !RENAMED.contains(entry.key())) {
                filled = filled.with(entry.key(), withUnknowns(before, after));
            }
        }
        return filled;
    }

    /** Without what held an item, which does not carry over; what lies behind is the new vehicle's and stays. */
    static MapTree withoutMount(MapTree plan, String item) {
        MapTree less = plan;
        for (String key : List.of("fastener", "fasteners", "thread", "tip")) {
            less = Trees.without(less, List.of("items", item, "mount", key));
        }
        return less;
    }

    /** The plan as it is written: of what does not carry over only its kind is left, and where it would go. */
    static MapTree kindsOnly(MapTree plan, Job job, Set<String> items) {
        MapTree all = Trees.map(plan.get("items"));
        for (String id : items) {
            MapTree entry = Trees.map(all.get(id));
            MapTree less = Trees.empty().with("kind", Trees.word(Zones.kindOf(job.items().get(id))));
            for (String key : List.of("place", "space", "enclosure", "fuses")) {
                less = entry.get(key) == null ? less : less.with(key, entry.get(key));
            }
            if (job.items().get(id) instanceof Item.Speaker speaker) {
                Map<String, Tree> coils = new LinkedHashMap<>();
                speaker.coils().keySet().forEach(coil -> coils.put(coil, Trees.word(Trees.UNKNOWN)));
                less = less.with("coils", Trees.group(coils));
            }
            all = all.with(id, less);
        }
        return all.entries().isEmpty() ? plan : plan.with("items", all);
    }
}
