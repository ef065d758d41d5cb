package bayproof.graph;

import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.Multigraph;
import org.jgrapht.graph.Pseudograph;

/**
 * The vehicle's body as ways for cables: places and pass-throughs are vertices, routes are edges; apart from that the
 * zones with the holes and openings between them.
 */
public final class BodyGraph {
    private final Job job;

    public BodyGraph(Job job) {
        this.job = job;
    }

    /** Zone in which a terminal lies. The body is everywhere: it has none of its own. */
    public Shown<String> zoneOf(Shown<String> terminal) {
        return terminal.then(name -> {
            Item item = job.itemOf(name);
            return item == null ? Shown.of("") : item.place().then(this::zoneOfPlace);
        });
    }

    private Shown<String> zoneOfPlace(String place) {
        Vehicle.Place known = job.vehicle().places().get(place);
        return known != null ? known.zone()
                : Shown.missing(new Need("places." + place + ".zone", "zone of the place " + place, job.planAt()));
    }

    /** The two zones of a run's ends; an end at the body lies where the other one does. */
    public Shown<List<String>> endZones(Run run) {
        return zoneOf(run.from()).with(zoneOf(run.to()), (from, to) ->
                List.of(from.isEmpty() ? to : from, to.isEmpty() ? from : to));
    }

    /** Every zone a run passes: those of its ends, its routes and its pass-throughs. */
    public Shown<Set<String>> zonesPassed(Run run) {
        Shown<Set<String>> zones = endZones(run).map(ends -> new LinkedHashSet<>(ends));
        for (String route : run.along().orElse(List.of())) {
            Vehicle.Route known = job.vehicle().routes().get(route);
            for (String end : known == null ? List.<String>of() : known.between().orElse(List.of())) {
                zones = zones.with(zonesAt(end), BodyGraph::union);
            }
        }
        for (String hole : run.through().orElse(List.of())) {
            zones = zones.with(zonesAt(hole), BodyGraph::union);
        }
        return zones;
    }

    private static Set<String> union(Set<String> one, List<String> other) {
        Set<String> all = new LinkedHashSet<>(one);
        all.addAll(other);
        return all;
    }

    private Shown<List<String>> zonesAt(String placeOrHole) {
        Vehicle.PassThrough hole = job.passThroughs().get(placeOrHole);
        return hole == null ? zoneOfPlace(placeOrHole).map(List::of) : hole.between();
    }

    /**
     * Length of a run: as given, otherwise the sum of its routes where they lead from its first place to its last.
     */
    public Shown<Double> lengthMetres(Run run) {
        if (run.lengthMetres().isGiven() || run.lengthMetres() instanceof Shown.Hidden || !run.along().isGiven()
                || run.along().orElse(List.of()).isEmpty()) {
            return run.lengthMetres();
        }
        Shown<Double> sum = Shown.of(0.0);
        StringBuilder calculation = new StringBuilder();
        for (String id : run.along().orElse(List.of())) {
            Vehicle.Route route = job.vehicle().routes().get(id);
            Shown<Double> length = route == null
                    ? Shown.missing(new Need("routes." + id + ".length", "length of the route " + id, run.at())) : route.lengthMetres();
            sum = sum.with(length, Double::sum);
            calculation.append(calculation.isEmpty() ? "" : " + ").append(id);
        }
        Shown<Double> whole = sum;
        return leads(run).then(yes -> yes ? whole.then(metres -> Shown.of(metres, () -> "routes " + calculation))
                : Shown.missing(new Need(run.path() + ".along", "routes that lead from " + run.from().orElse("its start") + " to "
                + run.to().orElse("its end"), run.at())));
    }

    private Shown<Boolean> leads(Run run) {
        return placeOf(run.from()).with(placeOf(run.to()), (from, to) -> {
            Graph<String, DefaultEdge> ways = new Multigraph<>(DefaultEdge.class);
            ways.addVertex(from);
            ways.addVertex(to);
            for (String id : run.along().orElse(List.of())) {
                Vehicle.Route route = job.vehicle().routes().get(id);
                List<String> ends = route == null ? List.of() : route.between().orElse(List.of());
                if (ends.size() == 2 && !ends.get(0).equals(ends.get(1))) {
                    ends.forEach(ways::addVertex);
                    ways.addEdge(ends.get(0), ends.get(1));
                }
            }
            return new ConnectivityInspector<>(ways).pathExists(from, to);
        });
    }

    private Shown<String> placeOf(Shown<String> terminal) {
        return terminal.then(name -> job.itemOf(name) == null ? Shown.of(name) : job.itemOf(name).place());
    }

    /** Whether the pass-throughs that a run names, with the openings between zones, lead from its first zone to its last. */
    public Shown<Boolean> passageLeads(Run run) {
        return endZones(run).with(run.through(), (ends, holes) -> {
            Graph<String, DefaultEdge> zones = new Pseudograph<>(DefaultEdge.class);
            ends.forEach(zones::addVertex);
            job.vehicle().zones().values().forEach(zone -> {
                zones.addVertex(zone.id());
                zone.openTo().orElse(List.of()).forEach(other -> join(zones, zone.id(), other));
            });
            for (String id : holes) {
                Vehicle.PassThrough hole = job.passThroughs().get(id);
                List<String> between = hole == null ? List.of() : hole.between().orElse(List.of());
                if (between.size() == 2) {
                    join(zones, between.get(0), between.get(1));
                }
            }
            return new ConnectivityInspector<>(zones).pathExists(ends.get(0), ends.get(1));
        });
    }

    private static void join(Graph<String, DefaultEdge> zones, String one, String other) {
        zones.addVertex(one);
        zones.addVertex(other);
        zones.addEdge(one, other);
    }

    /** Pass-throughs at which the routes of a run meet, in the order of its routes. */
    public List<String> holesOnRoutes(Run run) {
        List<String> holes = new ArrayList<>();
        for (String id : run.along().orElse(List.of())) {
            Vehicle.Route route = job.vehicle().routes().get(id);
            for (String end : route == null ? List.<String>of() : route.between().orElse(List.of())) {
                if (job.passThroughs().containsKey(end) && !holes.contains(end)) {
                    holes.add(end);
                }
            }
        }
        return holes;
    }

    /** Whether a run begins and ends in one zone and names no way out of it. */
    private boolean staysInside(Run run) {
        List<String> ends = endZones(run).orElse(List.of());
        return ends.size() == 2 && ends.get(0).equals(ends.get(1)) && run.through().orElse(List.of()).isEmpty() && holesOnRoutes(run).isEmpty();
    }

    /** Every hole a run goes through, missing where its holes are. */
    public Shown<Collection<String>> holes(Run run) {
        return staysInside(run) ? Shown.of(List.of()) : run.through().map(named -> {
            Set<String> all = new LinkedHashSet<>(named);
            all.addAll(holesOnRoutes(run));
            return all;
        });
    }

    /** Every zone a run passes, missing while its holes do not lead from its first zone to its last. */
    public Shown<Set<String>> zonesOnKnownWay(Run run) {
        return staysInside(run) ? zonesPassed(run) : passageLeads(run).then(leads -> leads ? zonesPassed(run)
                : Shown.missing(wayOut(run)));
    }

    /**
     * What would show a way for a run whose pass-throughs do not lead from its first zone to its last: other pass-throughs,
     * or an opening of its first or last zone of which nothing is said.
     */
    public List<Need> wayOut(Run run) {
        List<Need> needs = new ArrayList<>();
        needs.add(new Need(run.path() + ".through", "the pass-throughs this run goes through, in order", run.through().atOr(run.at())));
        endZones(run).orElse(List.of()).stream().distinct().map(id -> job.vehicle().zones().get(id)).filter(Objects::nonNull)
                .forEach(zone -> needs.addAll(zone.openTo().needs()));
        return needs;
    }
}
