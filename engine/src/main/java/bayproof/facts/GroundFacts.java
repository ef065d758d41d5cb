package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.Role;
import bayproof.graph.ShieldGraph;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.BodyStrap;
import bayproof.vocabulary.EyeletStack;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.GroundSite;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.PostRun;
import bayproof.vocabulary.ShieldLoop;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SignalReturn;
import bayproof.vocabulary.SignalShield;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** Facts about where returns meet the body, what they do to the signal, and what they do to the vehicle's own battery. */
final class GroundFacts {
    private final Model model;
    private final SolvedNetworks networks;
    /** Runs of the plan; what the vehicle maker laid is not judged. */
    private final List<Run> planned;
    private final List<Run> signalRuns;
    /** Returns with one end that nobody gave. */
    private final List<Run> openReturns;
    private final Map<Item, List<Run>> chain;
    private final Map<String, List<Link>> waysBack = new HashMap<>();
    private final Map<Item, Need> unreturned;

    GroundFacts(Model model, SolvedNetworks networks) {
        this.model = model;
        this.networks = networks;
        this.planned = model.job.runs().values().stream().filter(run -> !model.job.isFactory(run)).toList();
        this.signalRuns = planned.stream().filter(run -> model.wiring.role(run) == Role.SIGNAL).toList();
        this.openReturns = planned.stream()
                .filter(run -> run.from().isGiven() != run.to().isGiven() && model.wiring.role(run) == Role.RETURN).toList();
        this.chain = chainOf();
        this.unreturned = withoutReturn();
    }

    void collect(Consumer<Fact> facts) {
        sites(facts);
        stacks(facts);
        chain.forEach((item, runs) -> {
            facts.accept(signalReturn(item));
            if (needsSignal(item, runs)) {
                facts.accept(new SignalShield(item.path(), item.at(), Shown.missing(noSignal(item))));
            }
        });
        signalRuns.forEach(run -> facts.accept(new SignalShield(run.path(), run.at(), groundedAt(run))));
        loops(facts);
        straps(facts);
        posts(facts);
    }

    // where returns meet the body

    private void sites(Consumer<Fact> facts) {
        model.job.itemsOf(Item.GroundPoint.class).forEach(point -> facts.accept(new GroundSite(point.path(), point.at(), point.surface(),
                point.structure(), point.fastener(), point.shares(), point.sealed(),
                Ladders.knob(() -> List.of("bare-metal"), "items", point.id(), "surface"),
                Ladders.knob(() -> List.of("welded-body"), "items", point.id(), "structure"),
                Ladders.knob(() -> List.of("bolt-nut"), "items", point.id(), "fastener"),
                Ladders.knob(() -> List.of("none"), "items", point.id(), "shares"),
                Ladders.knob(() -> List.of("yes"), "items", point.id(), "sealed"))));
        for (Run run : planned) {
            if (run.from().orElse("").equals(WiringGraph.BODY) || run.to().orElse("").equals(WiringGraph.BODY)) {
                facts.accept(nowhere(run.path(), run.at(), pointOf(run)));
            }
        }
        unreturned.forEach((item, need) -> facts.accept(nowhere(item.path(), item.at(), need)));
    }

    private static Need pointOf(Run run) {
        return new Need("items", "the ground point at which " + run.id() + " meets the body", run.at());
    }

    private static GroundSite nowhere(String path, At at, Need need) {
        Shown<String> missing = Shown.missing(need);
        return new GroundSite(path, at, missing, missing, missing, missing, missing, null, null, null, null, null);
    }

    /** Every item that has a return terminal and no way from it to the body or to a battery, with what is asked. */
    private Map<Item, Need> withoutReturn() {
        Map<Item, Need> without = new LinkedHashMap<>();
        for (Item item : model.job.items().values()) {
            String terminal = returnTerminal(item);
            if (terminal != null && wayBack(item.id() + "." + terminal) == null) {
                without.put(item, openReturn(item, terminal));
            }
        }
        return without;
    }

    private static String returnTerminal(Item item) {
        return item.hasTerminal("ground") ? "ground" : item.hasTerminal("common") ? "common" : null;
    }

    /** The way from a return terminal to the body, or to a battery where nothing leads to the body; null where there is none. */
    private List<Link> wayBack(String terminal) {
        if (!waysBack.containsKey(terminal)) {
            List<Link> way = model.wiring.way(terminal, WiringGraph.BODY);
            for (Item.Battery battery : model.job.itemsOf(Item.Battery.class)) {
                way = way == null ? model.wiring.way(terminal, battery.id() + ".negative") : way;
            }
            waysBack.put(terminal, way);
        }
        return waysBack.get(terminal);
    }

    private Need openReturn(Item item, String terminal) {
        return model.wiring.at(item.id() + "." + terminal).stream().filter(link -> WiringGraph.isOpen(link.from()) || WiringGraph.isOpen(link.to()))
                .findFirst().map(link -> openEnd(link.run())).orElseGet(() -> new Need("runs",
                        "the way back from " + item.id() + "." + terminal + " to the battery's negative post", item.at()));
    }

    private static Need openEnd(Run run) {
        return (run.from().isGiven() ? run.to() : run.from()).needs().get(0);
    }

    // what lies on one fastener

    private void stacks(Consumer<Fact> facts) {
        for (Item item : model.job.items().values()) {
            if (item instanceof Item.GroundPoint) {
                facts.accept(new EyeletStack(item.path(), item.at(), eyelets(item.id() + ".stud", 1)));
            } else if (item instanceof Item.GroundBar bar) {
                facts.accept(new EyeletStack(bar.path(), bar.at(), bar.screws().then(screws -> eyelets(bar.id() + ".bar", screws))));
            }
        }
    }

    /** Eyelets on the fullest of some fasteners; a return whose end nobody gave may lie there as well where it would be one too many. */
    private Shown<String> eyelets(String terminal, int fasteners) {
        long known = model.wiring.at(terminal).stream().filter(link -> link.kind() == Link.Kind.RUN).count();
        boolean full = !fits(known + openReturns.size(), fasteners);
        return full && fits(known, fasteners) ? Shown.missing(openReturns.stream().map(GroundFacts::openEnd).toList())
                : Shown.of(onFullest(known, fasteners));
    }

    private boolean fits(long eyelets, int fasteners) {
        return model.limit("eyelets-per-fastener").words().contains(onFullest(eyelets, fasteners));
    }

    private static String onFullest(long eyelets, int fasteners) {
        return String.valueOf((eyelets + fasteners - 1) / Math.max(fasteners, 1));
    }

    // the audio chain

    /** Everything the signal passes, with its signal runs: what makes or bends it, and accessories that a signal run reaches. */
    private Map<Item, List<Run>> chainOf() {
        Map<Item, List<Run>> all = new LinkedHashMap<>();
        for (Item item : model.job.items().values()) {
            if (item instanceof Item.Powered) {
                all.put(item, new ArrayList<>());
            }
        }
        for (Run run : signalRuns) {
            for (Shown<String> end : List.of(run.from(), run.to())) {
                List<Run> runs = all.get(model.job.itemOf(end.orElse("")));
                if (runs != null) {
                    runs.add(run);
                }
            }
        }
        all.entrySet().removeIf(entry -> entry.getKey() instanceof Item.Accessory && entry.getValue().isEmpty());
        return all;
    }

    /** An interface can serve without a signal run; what makes sound of a signal cannot. */
    private static boolean needsSignal(Item item, List<Run> runs) {
        return runs.isEmpty() && !(item instanceof Item.Interface);
    }

    private static Need noSignal(Item item) {
        return new Need("runs", "the run that brings a signal to " + item.id(), item.at());
    }

    private SignalReturn signalReturn(Item item) {
        Shown<String> landing = landing(item);
        Shown<Double> offset = landing.with(model.job.plan().signalGround(), (point, signal) -> new String[] {point, signal + ".stud"})
                .then(pair -> pair[0].equals(pair[1]) ? Shown.of(0.0, () -> "the same point") : offset(item, pair[0], pair[1]));
        note(item.path() + ".ground-offset", offset, Dimension.VOLTAGE);
        return new SignalReturn(item.path(), item.at(), offset);
    }

    /** The last terminal before the body on the way back of an item. */
    private Shown<String> landing(Item item) {
        List<Link> way = wayBack(item.id() + ".ground");
        if (way == null) {
            return Shown.missing(openReturn(item, "ground"));
        }
        String terminal = item.id() + ".ground";
        for (Link link : way) {
            if (link.other(terminal).equals(WiringGraph.BODY)) {
                return link.kind() == Link.Kind.RUN && !model.isStrap(link) ? Shown.missing(pointOf(link.run())) : Shown.of(terminal);
            }
            terminal = link.other(terminal);
        }
        return Shown.of(terminal);
    }

    /** Two points that nobody measured may differ either way, so the reading is asked for rather than assumed. */
    private Shown<Double> offset(Item item, String landing, String signal) {
        return bodyReturn(landing).with(bodyReturn(signal), Double::sum)
                .then(measured -> networks.windowed(0, corner -> Returns.offset(corner, item, landing, signal)));
    }

    private Shown<Double> bodyReturn(String terminal) {
        return model.job.itemOf(terminal) instanceof Item.GroundPoint point ? point.bodyReturnOhms() : Shown.of(0.0);
    }

    private void note(String path, Shown<Double> value, Dimension dimension) {
        if (value instanceof Shown.Given<Double> given) {
            model.numbers.put(path, given.value(), dimension, given.calculation());
        } else if (value instanceof Shown.Assumed<Double> assumed && assumed.bad() != null) {
            model.numbers.put(path, assumed.bad(), dimension, () -> assumed.calculation().get() + "; every window at its bad end");
        }
    }

    // shields

    private static Shown<String> groundedAt(Run run) {
        return run.shield().then(ends -> {
            boolean from = ends.contains("from");
            boolean to = ends.contains("to");
            return !List.of("from", "to").containsAll(ends)
                    ? Shown.missing(new Need(run.path() + ".shield", "ends at which the shield is grounded: from, to, both of them, or none",
                    run.shield().atOr(run.at())))
                    : Shown.of(from && to ? "both" : from ? "from" : to ? "to" : "neither");
        });
    }

    /** Loops that are known, and those that would close if every shield that nobody wrote down were grounded at both ends. */
    private void loops(Consumer<Fact> facts) {
        ShieldGraph known = new ShieldGraph();
        ShieldGraph possible = new ShieldGraph();
        Map<String, List<Need>> doubts = new HashMap<>();
        for (Item item : chain.keySet()) {
            possible.grounded(item.id());
            if (unreturned.containsKey(item)) {
                doubts.computeIfAbsent(item.id(), id -> new ArrayList<>()).add(unreturned.get(item));
            } else {
                known.grounded(item.id());
            }
        }
        for (Run run : signalRuns) {
            Item from = model.job.itemOf(run.from().orElse(""));
            Item to = model.job.itemOf(run.to().orElse(""));
            Shown<String> grounded = groundedAt(run);
            boolean open = from == null || to == null;
            if (!open && grounded.orElse("").equals("both")) {
                known.shield(run.id(), from.id(), to.id());
                possible.shield(run.id(), from.id(), to.id());
            } else if (!grounded.isGiven() || open && grounded.orElse("").equals("both")) {
                Need need = grounded.isGiven() ? openEnd(run) : grounded.needs().get(0);
                doubts.computeIfAbsent(run.id(), id -> new ArrayList<>()).add(need);
                possible.shield(run.id(), from == null ? "?" : from.id(), to == null ? "?" : to.id());
            }
        }
        Map<String, List<String>> closed = known.loops();
        Map<String, List<String>> could = possible.loops();
        chain.forEach((item, runs) -> {
            List<String> loop = closed.get(item.id());
            List<Need> needs = could.getOrDefault(item.id(), List.of()).stream().flatMap(name -> doubts.getOrDefault(name, List.of()).stream())
                    .distinct().toList();
            Shown<Boolean> free = loop != null ? Shown.of(false) : runs.isEmpty() ? Shown.missing(noSignal(item))
                    : could.containsKey(item.id()) ? Shown.missing(needs) : Shown.of(true);
            if (!runs.isEmpty() || needsSignal(item, runs)) {
                facts.accept(new ShieldLoop(item.path(), item.at(), free, Shown.of(loop == null ? "" : String.join(", ", loop))));
            }
        });
    }

    // the strap of the battery

    private void straps(Consumer<Fact> facts) {
        if (model.job.items().values().stream().noneMatch(item -> returnTerminal(item) != null)) {
            return;
        }
        for (Item.Battery battery : model.job.itemsOf(Item.Battery.class)) {
            if (!model.isVehiclePost(battery.id() + ".negative", ".negative")) {
                continue;
            }
            List<Run> straps = model.wiring.at(battery.id() + ".negative").stream().filter(model::isStrap).map(Link::run).toList();
            if (straps.isEmpty()) {
                facts.accept(new BodyStrap(battery.path(), battery.at(), Shown.missing(new Need("supply.links",
                        "the strap from " + battery.id() + ".negative to the body", battery.at()))));
            } else {
                facts.accept(strap(straps));
            }
        }
    }

    private BodyStrap strap(List<Run> straps) {
        Run first = straps.get(0);
        Shown<Double> ampacity = Shown.of(0.0);
        for (Run strap : straps) {
            ampacity = ampacity.with(ampacity(strap), Double::sum);
        }
        Shown<Double> share = ampacity.then(most -> scaled(networks.windowed(0, Returns::led), most));
        note(first.path() + ".return-share", share, Dimension.RATIO);
        return new BodyStrap(first.path(), first.at(), share);
    }

    private static Shown<Double> scaled(Shown<Double> amperes, double most) {
        if (amperes instanceof Shown.Assumed<Double> assumed) {
            return new Shown.Assumed<>(assumed.bad() == null ? null : Sums.share(assumed.bad(), most), Sums.share(assumed.good(), most), assumed.windows(),
                    () -> assumed.calculation().get() + ", over an ampacity of " + Model.print(most, Dimension.CURRENT));
        }
        return amperes.then(value -> Shown.of(Sums.share(value, most), () -> Model.print(value, Dimension.CURRENT)
                + " of the job into the body, over an ampacity of " + Model.print(most, Dimension.CURRENT)));
    }

    /** The maker's strap is judged by the metal it is said to have: a window would only blur what a look settles. */
    private Shown<Double> ampacity(Run strap) {
        return strap.size().with(strap.metal(), (size, metal) -> new String[] {size, metal})
                .with(model.insulationCelsius(strap).with(model.ambientCelsius(strap), (insulation, ambient) -> new double[] {insulation, ambient}),
                        (made, heat) -> model.conductors().ampacityAmperes(made[0], made[1], heat[0], heat[1]))
                .then(amperes -> carries(strap, amperes));
    }

    private static Shown<Double> carries(Run strap, OptionalDouble amperes) {
        return amperes.isPresent() && amperes.getAsDouble() > 0 ? Shown.of(amperes.getAsDouble())
                : new Shown.Collapsed<>("there is no published current for " + strap.id() + " with its insulation where it lies");
    }

    // the posts of the vehicle's battery

    private void posts(Consumer<Fact> facts) {
        Shown<String> sensor = model.job.vehicle().supply().batterySensor();
        Shown<Boolean> sensed = sensor.map(where -> !where.equals("none"));
        for (Run run : planned) {
            String post = post(run);
            if (post != null) {
                facts.accept(new PostRun(run.path(), run.at(), sensed, sensor.map(where -> !where.equals(post)), sensor));
            }
        }
        openReturns.stream().filter(run -> post(run) == null)
                .forEach(run -> facts.accept(new PostRun(run.path(), run.at(), sensed, Shown.missing(openEnd(run)), sensor)));
        unreturned.forEach((item, need) -> facts.accept(new PostRun(item.path(), item.at(), sensed, Shown.missing(need), sensor)));
    }

    /** The post a run ends at, in the words of the sheet; null when it ends at none. */
    private String post(Run run) {
        for (String end : List.of(run.from().orElse(""), run.to().orElse(""))) {
            if (model.isVehiclePost(end, ".negative")) {
                return "negative-post";
            }
            if (model.isVehiclePost(end, ".positive")) {
                return "positive-post";
            }
        }
        return null;
    }
}
