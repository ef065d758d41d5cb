package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.solve.Converter;
import bayproof.solve.ConverterSolver;
import bayproof.solve.Load;
import bayproof.solve.Network;
import bayproof.solve.OperatingPoint;
import bayproof.solve.Solution;
import bayproof.solve.Solver;
import bayproof.solve.sound.Draw;
import bayproof.units.Dimension;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** The power side of a job as a network for the solver, at one corner of its windows and in one state. */
final class SupplyNetwork {
    /** Draw at idle stands beside the power drawn for output. */
    private static final String IDLE = ".idle";
    private static final String OWN_LOAD = "own load";
    private static final String INPUT = ".input";

    private final Model model;
    private final Amplifiers amplifiers;
    private final Corner corner;
    private final State state;
    private final List<Item.Battery> batteries;
    private final List<Item> powered = new ArrayList<>();
    private final List<Converter> converters = new ArrayList<>();
    private final Map<Item, Double> unseenCutOffs = new IdentityHashMap<>();
    private Network network;

    SupplyNetwork(Model model, Amplifiers amplifiers, Corner corner, State state) {
        this.model = model;
        this.amplifiers = amplifiers;
        this.corner = corner;
        this.state = state;
        this.batteries = model.job.itemsOf(Item.Battery.class);
        build();
    }

    private void build() {
        if (batteries.isEmpty()) {
            corner.need(new Need("supply.sources", "the battery that feeds the job", model.job.planAt()));
            return;
        }
        String positive = batteries.get(0).id() + ".positive";
        String negative = batteries.get(0).id() + ".negative";
        Network.Builder builder = new Network.Builder(negative);
        branches(builder);
        if (strapUnseen()) {
            strap(builder, negative);
        }
        sources(builder, positive, negative);
        for (Item item : model.job.items().values()) {
            if (item.hasTerminal("supply")) {
                powered.add(item);
                load(builder, item);
            }
        }
        model.job.itemsOf(Item.Relay.class).forEach(relay -> coil(builder, relay));
        if (state.charges()) {
            double own = corner.given(model.job.vehicle().supply().ownLoadAmperes());
            if (corner.isWhole()) {
                builder.constantCurrent(OWN_LOAD, positive, negative, own, 0);
            }
        }
        if (corner.isWhole()) {
            network = builder.build();
        }
    }

    private void branches(Network.Builder builder) {
        for (Link link : model.wiring.links()) {
            if (link.kind() == Link.Kind.RUN && !model.wiring.role(link.run()).isPower()) {
                continue;
            }
            if (WiringGraph.isOpen(link.from()) || WiringGraph.isOpen(link.to())) {
                corner.given((link.run().from().isGiven() ? link.run().to() : link.run().from()).map(end -> 0.0));
                continue;
            }
            double ohms = switch (link.kind()) {
                case RUN -> runOhms(link.run());
                case FUSE -> corner.orWindow(link.item() instanceof Item.Fuse fuse ? fuse.ohms() : ((Item.FuseBlock) link.item()).ohms(),
                        "fuse-resistance");
                case CONTACTS -> corner.orWindow(((Item.Relay) link.item()).ohms(), "contact-resistance");
                case BODY -> corner.orWindow(((Item.GroundPoint) link.item()).bodyReturnOhms(), "body-return");
            };
            if (corner.isWhole()) {
                builder.branch(branch(link), link.from(), link.to(), ohms);
            }
        }
    }

    /** Whether nobody has looked at the vehicle yet: its own strap from the battery to the body is there all the same. */
    private boolean strapUnseen() {
        return !model.job.vehicleNamed() && batteries.stream().noneMatch(battery -> model.joined(battery.id() + ".negative", WiringGraph.BODY));
    }

    private void strap(Network.Builder builder, String negative) {
        if (model.wiring.links().stream().anyMatch(link -> link.from().equals(WiringGraph.BODY) || link.to().equals(WiringGraph.BODY))) {
            double ohms = corner.window("factory-strap", "supply.links");
            if (corner.isWhole()) {
                builder.branch("strap", WiringGraph.BODY, negative, ohms);
            }
        }
    }

    /** Resistance of the joint at one end of a run; a joint of known resistance from wire to wire is shared by both of them. */
    private double endOhms(Run run, Shown<String> terminal) {
        return model.job.itemOf(terminal.orElse("")) instanceof Item.Joint joint && joint.ohms().isGiven() ? corner.given(joint.ohms()) / 2
                : corner.window("joint-resistance", run.path());
    }

    /** Resistance of a run with the joint at each of its ends. */
    private double runOhms(Run run) {
        String size = corner.givenOrNull(run.size());
        double length = corner.given(model.lengthMetres(run));
        double ambient = corner.orWindow(model.ambientCelsius(run), "ambient-anywhere");
        double metal = 1;
        String name = run.metal().orElse("copper");
        if (!run.metal().isGiven()) {
            metal = corner.window("conductor-metal", run.path() + ".metal");
        }
        double warming = corner.window("conductor-warming", run.path());
        double joints = endOhms(run, run.from()) + endOhms(run, run.to());
        if (size == null || !corner.isWhole()) {
            return Double.NaN;
        }
        return model.conductors().ohmsPerMetre(size, name, ambient + warming) * metal * length + joints;
    }

    private void sources(Network.Builder builder, String positive, String negative) {
        Item.Battery starter = state == State.CRANKING ? new Sides(model).starter() : null;
        for (Item.Battery battery : batteries) {
            if (battery == starter) {
                double dip = corner.given(model.job.vehicle().supply().startDipVolts());
                if (corner.isWhole()) {
                    builder.regulated(battery.id(), battery.id() + ".positive", battery.id() + ".negative", dip, Double.POSITIVE_INFINITY);
                }
                continue;
            }
            // At idle the battery that is charged is left out: it must not have to give.
            if (state != State.CHARGING_IDLE || !isCharged(battery)) {
                double rest = corner.orWindow(battery.restVolts(), "battery-rest");
                double ohms = corner.orWindow(battery.internalOhms(), "battery-resistance");
                double acceptance = corner.orWindow(battery.acceptanceAmperes(), "battery-acceptance");
                if (corner.isWhole()) {
                    builder.battery(battery.id(), battery.id() + ".positive", battery.id() + ".negative", rest, ohms, acceptance);
                }
            }
        }
        if (state.charges()) {
            model.job.itemsOf(Item.Charger.class).forEach(charger -> charger(builder, charger, positive, negative));
        }
        if (state != State.ON_BATTERY) {
            model.job.itemsOf(Item.Converter.class).forEach(converter -> converter(builder, converter));
        }
    }

    private boolean isCharged(Item.Battery battery) {
        return model.job.itemsOf(Item.Charger.class).stream()
                .anyMatch(charger -> model.joined(battery.id() + ".positive", charger.id() + ".output"));
    }

    /** A converter is a source at its output and draws at its input what it gives, over its efficiency. */
    private void converter(Network.Builder builder, Item.Converter converter) {
        double volts = corner.given(converter.setVolts());
        double limit = corner.given(converter.limitAmperes());
        double efficiency = corner.given(converter.efficiency());
        for (String terminal : List.of(".in", ".out")) {
            if (batteries.stream().noneMatch(battery -> model.joined(converter.id() + terminal, battery.id() + ".positive"))) {
                corner.need(new Need("runs", "the run that joins " + converter.id() + terminal + " to a battery", converter.at()));
            }
        }
        if (batteries.stream().noneMatch(battery -> model.joined(converter.id() + ".common", battery.id() + ".negative"))) {
            corner.need(new Need("runs", "the way back from " + converter.id() + ".common", converter.at()));
        }
        if (corner.isWhole()) {
            builder.regulated(converter.id(), converter.id() + ".out", converter.id() + ".common", volts, limit);
            builder.constantPower(converter.id() + INPUT, converter.id() + ".in", converter.id() + ".common", 0, 0);
            converters.add(new Converter(converter.id(), converter.id() + INPUT, efficiency));
        }
    }

    private void charger(Network.Builder builder, Item.Charger charger, String positive, String negative) {
        double volts = SupplyVolts.setPoint(charger, corner);
        // What is left at idle is asked apart; here the set point holds so that the draw can be read off.
        double limit = state == State.CHARGING_IDLE ? Double.POSITIVE_INFINITY : corner.given(charger.ratedAmperes());
        if (!model.joined(charger.id() + ".output", positive)) {
            corner.need(new Need("supply.links", "the link from " + charger.id() + ".output to the battery", charger.at()));
        }
        if (!model.joined(charger.id() + ".case", negative)) {
            corner.need(new Need("supply.links", "the link from " + charger.id() + ".case to the battery's negative post", charger.at()));
        }
        if (corner.isWhole()) {
            builder.regulated(charger.id(), charger.id() + ".output", charger.id() + ".case", volts, limit);
        }
    }

    private void load(Network.Builder builder, Item item) {
        String supply = item.id() + ".supply";
        String ground = item.id() + ".ground";
        Item.Battery battery = batteryOf(item);
        if (battery == null) {
            corner.need(new Need("runs", "the run that feeds " + supply, item.at()));
        }
        if (!model.powers((battery == null ? batteries.get(0) : battery).id() + ".negative", ground)
                && !(strapUnseen() && model.powers(WiringGraph.BODY, ground))) {
            corner.need(new Need("runs", "the way back from " + ground + " to the battery's negative post", item.at()));
        }
        double idle = item instanceof Item.Amplifier amplifier ? corner.orWindow(amplifier.idleAmperes(), "amplifier-idle-draw")
                : corner.given(drawAmperes(item));
        double cutOff = cutOffVolts(item);
        if (item instanceof Item.Amplifier amplifier) {
            double watts = amplifiers.supplyWatts(amplifier, 1, corner);
            if (corner.isWhole()) {
                builder.constantPower(item.id(), supply, ground, watts, cutOff);
            }
        }
        if (corner.isWhole()) {
            builder.constantCurrent(item.id() + IDLE, supply, ground, idle, cutOff);
        }
    }

    /** The coil of a relay draws from the supply where a battery feeds it; one that an output drives does not. */
    private void coil(Network.Builder builder, Item.Relay relay) {
        if (!model.feeds().reaches(relay.id() + ".86")) {
            return;
        }
        if (batteries.stream().noneMatch(battery -> model.joined(relay.id() + ".85", battery.id() + ".negative"))) {
            corner.need(new Need("runs", "the way back from " + relay.id() + ".85 to the battery's negative post", relay.at()));
        }
        double amperes = corner.given(relay.coilAmperes());
        if (corner.isWhole()) {
            builder.constantCurrent(relay.id() + ".coil", relay.id() + ".86", relay.id() + ".85", amperes, 0);
        }
    }

    /**
     * Volts below which an item lets go. Where nobody gave them it draws on whatever it gets, so that the others are not
     * freed of its current, and is judged by the window afterwards.
     */
    private double cutOffVolts(Item item) {
        Shown<Double> least = ((Item.Powered) item).minimumVolts();
        // At a start the volts that are left are the question; an item that lets go does not answer it.
        if (state == State.CRANKING || least.isGiven()) {
            return state == State.CRANKING ? 0 : least.orElse(0.0);
        }
        unseenCutOffs.put(item, corner.orWindow(least, "cut-off-volts"));
        return 0;
    }

    static Shown<Double> drawAmperes(Item item) {
        return item instanceof Item.Interface module ? module.drawAmperes()
                : item instanceof Item.Processor processor ? processor.drawAmperes() : ((Item.Accessory) item).drawAmperes();
    }

    List<Item> powered() {
        return powered;
    }

    /** Whether everything that the network needs is known or stands in a window. */
    boolean isWhole() {
        return network != null;
    }

    /** Solves at a level; the wiring is worked out only once. */
    Solution solve(Level level) {
        List<Load> changed = new ArrayList<>();
        double share = level.share(model);
        for (Load load : network.loads()) {
            if (load instanceof Load.ConstantPower power && !power.id().endsWith(INPUT)) {
                Item.Amplifier amplifier = (Item.Amplifier) model.job.items().get(power.id());
                double watts = amplifiers.supplyWatts(amplifier, share, corner);
                changed.add(Amplifiers.isUnregulated(amplifier) && watts > 0 ? new Load.Resistive(power.id(), power.positive(), power.negative(),
                        Draw.unregulatedOhms(watts, model.value("amplifier-rating-volts")), power.cutOffVolts())
                        : new Load.ConstantPower(power.id(), power.positive(), power.negative(), watts, power.cutOffVolts()));
            }
        }
        return ConverterSolver.solve(network.withLoads(changed), converters);
    }

    /** The battery that an item's feed leads to; null where there is none. */
    private Item.Battery batteryOf(Item item) {
        return batteries.stream().filter(battery -> model.powers(battery.id() + ".positive", item.id() + ".supply")).findFirst().orElse(null);
    }

    /** Volts from the posts of an item's battery to its terminals, lost on the way. */
    double lostVolts(OperatingPoint point, Item item) {
        return postVolts(point, item) - point.voltsAcross(item.id() + ".supply", item.id() + ".ground");
    }

    double postVolts(OperatingPoint point, Item item) {
        String battery = batteryOf(item).id();
        return point.voltsAcross(battery + ".positive", battery + ".negative");
    }

    /** Whether an item shuts down at this point. */
    boolean isDown(OperatingPoint point, Item item) {
        return point.belowCutOff().contains(item.id()) || point.belowCutOff().contains(item.id() + IDLE)
                || unseenCutOffs.containsKey(item) && point.voltsAcross(item.id() + ".supply", item.id() + ".ground") < unseenCutOffs.get(item);
    }

    double itemAmperes(OperatingPoint point, Item item) {
        double idle = point.loadAmperes(item.id() + IDLE);
        return item instanceof Item.Amplifier ? idle + point.loadAmperes(item.id()) : idle;
    }

    /** The current that the job leads into the body: what leaves it again through the maker's links and the straps. */
    double returnAmperes(OperatingPoint point) {
        double sum = 0;
        for (Link link : model.wiring.links()) {
            boolean strap = model.isStrap(link);
            boolean makers = link.kind() == Link.Kind.RUN && model.job.isFactory(link.run());
            if (strap || makers && (link.from().equals(WiringGraph.BODY) || link.to().equals(WiringGraph.BODY))) {
                boolean outward = strap ? model.isVehiclePost(link.to(), ".negative") : link.from().equals(WiringGraph.BODY);
                double amperes = point.branchAmperes(link.kind() + " " + link.id());
                sum += outward ? amperes : -amperes;
            }
        }
        return Math.abs(sum);
    }

    /** Current of a run or fuse, positive from its first end to its last. */
    static double amperes(OperatingPoint point, Link link) {
        return point.branchAmperes(branch(link));
    }

    private static String branch(Link link) {
        return link.kind() + " " + link.id();
    }

    static String volts(double volts) {
        return Model.print(volts, Dimension.VOLTAGE);
    }
}
