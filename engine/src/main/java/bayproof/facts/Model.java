package bayproof.facts;

import bayproof.demand.Limit;
import bayproof.graph.BodyGraph;
import bayproof.graph.Link;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.References;
import bayproof.read.Run;
import bayproof.read.SharedTables;
import bayproof.read.Vehicle;
import bayproof.solve.Conductors;
import bayproof.solve.FuseLadder;
import bayproof.units.Dimension;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** One job with its graphs and tables, and the values of a run that several facts need. */
final class Model {
    final Job job;
    final WiringGraph wiring;
    final BodyGraph body;
    final Numbers numbers = new Numbers();
    /** Asked for again at every corner of the windows; they do not depend on it. */
    private final Map<String, Shown<Double>> ambients = new ConcurrentHashMap<>();
    private final Map<String, Shown<Double>> lengths = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> powered = new ConcurrentHashMap<>();
    private FeedTree feeds;

    Model(Job job) {
        this.job = job;
        this.wiring = new WiringGraph(job);
        this.body = new BodyGraph(job);
    }

    /** The live side of the wiring, grown once: several facts and every network ask for it. */
    synchronized FeedTree feeds() {
        if (feeds == null) {
            feeds = new FeedTree(this);
        }
        return feeds;
    }

    /** The output of the vehicle that a wiring entry hangs on; null where it is an amplifier's. */
    Vehicle.Output factoryOutput(Plan.Wiring wiring) {
        return wiring.id().endsWith(References.OUTPUT)
                ? job.vehicle().outputs().get(wiring.id().substring(0, wiring.id().length() - References.OUTPUT.length())) : null;
    }

    /** Whether a pin of a factory connector carries the output that ends at this terminal. */
    boolean carries(Plan.PinUse pin, String terminal) {
        Vehicle.Cavity cavity = job.vehicle().cavity(pin);
        return cavity != null && terminal.equals(cavity.output().orElse("") + References.OUTPUT);
    }

    Conductors conductors() {
        return SharedTables.conductors();
    }

    FuseLadder fuses() {
        return SharedTables.fuses();
    }

    double value(String limit) {
        return job.limits().named(limit).value();
    }

    Limit limit(String name) {
        return job.limits().named(name);
    }

    static String print(double si, Dimension dimension) {
        return Units.print(si, dimension);
    }

    /** The hottest zone a run passes: as the sheet or a reading says, otherwise by its kind. */
    Shown<Double> ambientCelsius(Run run) {
        return ambients.computeIfAbsent(run.id(), id -> body.zonesPassed(run).then(zones -> hottest(zones, run)));
    }

    /** Length of a run, see {@link BodyGraph#lengthMetres}. */
    Shown<Double> lengthMetres(Run run) {
        return lengths.computeIfAbsent(run.id(), id -> body.lengthMetres(run));
    }

    /** Whether a conducting way joins two terminals. */
    boolean joined(String one, String other) {
        return wiring.joins(one, other);
    }

    /** Whether a way of power conductors leads from a post to a terminal; a wire of speakers or signals is no part of the power network. */
    boolean powers(String post, String terminal) {
        return powered.computeIfAbsent(post, from -> wiring.reached(from, link -> link.kind() != Link.Kind.RUN || wiring.role(link.run()).isPower()))
                .contains(terminal);
    }

    /** Whether a run joins the negative post of the vehicle's own battery to the body, straight or at a ground point. */
    boolean isStrap(Link link) {
        return link.kind() == Link.Kind.RUN && (isVehiclePost(link.from(), ".negative") && isBody(link.to())
                || isVehiclePost(link.to(), ".negative") && isBody(link.from()));
    }

    private boolean isBody(String terminal) {
        return terminal.equals(WiringGraph.BODY) || job.itemOf(terminal) instanceof Item.GroundPoint;
    }

    /** Whether a terminal is a post of a battery that stands in the vehicle sheet. */
    boolean isVehiclePost(String terminal, String post) {
        return terminal.endsWith(post) && job.itemOf(terminal) instanceof Item.Battery battery && battery.path().startsWith("supply.");
    }

    /**
     * Kind of a zone.
     *
     * @param at where it would be missing
     */
    Shown<String> zoneKind(String id, At at) {
        Vehicle.Zone zone = job.vehicle().zones().get(id);
        return zone == null ? Shown.missing(new Need("zones." + id + ".kind", "kind of the zone " + id, at)) : zone.kind();
    }

    /** Kind of the zone that an item sits in. */
    Shown<String> zoneKind(Item item) {
        return zoneOf(item).then(id -> zoneKind(id, item.at()));
    }

    /** Highest temperature of the zone that an item sits in. */
    Shown<Double> zoneCelsius(Item item) {
        return zoneOf(item).then(id -> zoneCelsius(id, item.at()));
    }

    /** Highest temperature of a zone: as the sheet or a reading says, otherwise by its kind. */
    private Shown<Double> zoneCelsius(String id, At at) {
        Vehicle.Zone zone = job.vehicle().zones().get(id);
        return zone != null && zone.ambientCelsius().isGiven() ? zone.ambientCelsius() : zoneKind(id, at).map(kind -> value("ambient-" + kind));
    }

    private Shown<String> zoneOf(Item item) {
        return item.place().then(id -> {
            Vehicle.Place place = job.vehicle().places().get(id);
            return place == null ? Shown.<String>missing(new Need("places." + id + ".zone", "zone of the place " + id, item.at())) : place.zone();
        });
    }

    private Shown<Double> hottest(Set<String> zones, Run run) {
        Shown<Double> hottest = Shown.of(Double.NEGATIVE_INFINITY);
        for (String id : zones) {
            if (!id.isEmpty()) {
                hottest = hottest.with(zoneCelsius(id, run.at()), Math::max);
            }
        }
        return hottest.then(celsius -> Double.isInfinite(celsius)
                ? Shown.missing(new Need(run.path() + ".from", "a place for either end of the run", run.at())) : Shown.of(celsius));
    }

    /** Insulation class; a conductor without a print takes the lowest one. */
    Shown<Double> insulationCelsius(Run run) {
        return run.insulation().map(text -> {
            if (text.equals("no-print")) {
                return value("insulation-no-print");
            }
            try {
                return Units.parse(text, Dimension.TEMPERATURE).si();
            } catch (UnitException e) {
                throw new IllegalStateException("the reader let an insulation class pass: " + text, e);
            }
        });
    }

    Shown<Boolean> sheathed(Run run) {
        return run.cover().map(cover -> limit("sheaths").words().contains(cover));
    }
}
