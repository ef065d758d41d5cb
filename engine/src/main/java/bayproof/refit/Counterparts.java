package bayproof.refit;

import bayproof.graph.BodyGraph;
import bayproof.read.Choices;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.refit.Matcher.Candidates;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What stands in the new vehicle for each thing of the old one that the job uses. A thing is sought by what it serves for: a hole by the
 * kinds of zones it joins and by the runs that pass it, a connector by its family and by the functions the job takes from it, an output
 * by what it gives and by the cavity it comes out of.
 */
public final class Counterparts {
    private static final int SIDES = 2;
    private static final String NOBODY = "that nobody wrote";

    private final Job old;
    private final Job into;
    private final PlaceMatches places;
    private final RunWays ways;
    private final Map<String, Set<String>> passing = new LinkedHashMap<>();
    private final Map<String, Counterpart> holes;
    private final Map<String, Counterpart> connectors;
    private final Map<String, Counterpart> outputs;
    private final Map<String, Counterpart> networks;

    Counterparts(Job old, Job into, PlaceMatches places, RunWays ways, Choices.Decided choices) {
        this.old = old;
        this.into = into;
        this.places = places;
        this.ways = ways;
        usedHoles();
        this.holes = new Matcher(choices.holes(), this::holes, id -> "hole between " + String.join(" and ", Zones.kindsBeside(old, id))).match(passing.keySet());
        this.connectors = new Matcher(choices.connectors(), this::connectors, id -> "connector of the family " + old.vehicle().connectors().get(id).family().orElse(NOBODY))
                .match(usedConnectors());
        this.outputs = new Matcher(choices.outputs(), this::outputs, id -> "output of the kind " + old.vehicle().outputs().get(id).kind().orElse(NOBODY)).match(usedOutputs());
        this.networks = new Matcher(choices.networks(), this::networks, id -> "data bus of the kind "
                + (old.vehicle().networks().containsKey(id) ? old.vehicle().networks().get(id).kind().orElse(NOBODY) : NOBODY))
                .match(old.plan().buses().map(Map::keySet).orElse(Set.of()));
    }

    // what the job uses

    private void usedHoles() {
        BodyGraph body = new BodyGraph(old);
        for (Run run : old.plan().runs().values()) {
            Set<String> through = new LinkedHashSet<>(run.through().orElse(List.of()));
            through.addAll(body.holesOnRoutes(run));
            through.retainAll(old.passThroughs().keySet());
            through.forEach(hole -> passing.computeIfAbsent(hole, any -> new LinkedHashSet<>()).add(run.id()));
        }
    }

    private Collection<String> usedConnectors() {
        Set<String> used = new LinkedHashSet<>();
        old.plan().pins().keySet().forEach(pin -> used.add(connectorOf(pin)));
        used.retainAll(old.vehicle().connectors().keySet());
        return used;
    }

    private Collection<String> usedOutputs() {
        Set<String> used = new LinkedHashSet<>();
        old.plan().audioInputs().values().forEach(input -> used.addAll(input.of().orElse(List.of())));
        for (Plan.PinUse pin : old.plan().pins().values()) {
            Vehicle.Cavity cavity = cavity(old, pin.id());
            if (cavity != null) {
                cavity.output().map(used::add);
            }
        }
        used.retainAll(old.vehicle().outputs().keySet());
        return used;
    }

    // what may serve

    private Candidates holes(String id) {
        List<String> kinds = Zones.kindsBeside(old, id);
        if (kinds.size() < SIDES) {
            return new Candidates(List.copyOf(into.passThroughs().keySet()), false);
        }
        List<String> alike = into.passThroughs().keySet().stream().filter(hole -> Zones.kindsBeside(into, hole).equals(kinds)).toList();
        if (alike.isEmpty()) {
            return new Candidates(into.passThroughs().keySet().stream().filter(hole -> Zones.kindsBeside(into, hole).size() < SIDES).toList(), false);
        }
        Map<String, Long> runs = new LinkedHashMap<>();
        alike.forEach(hole -> runs.put(hole, passing.get(id).stream().filter(run -> ways.of(run) != null && ways.of(run).way() != null
                && ways.of(run).way().holes().contains(hole)).count()));
        long most = runs.values().stream().mapToLong(Long::longValue).max().orElse(0);
        return Candidates.sure(alike.stream().filter(hole -> runs.get(hole) == most).toList());
    }

    private Candidates connectors(String id) {
        String family = old.vehicle().connectors().get(id).family().orElse("");
        if (family.isEmpty()) {
            return new Candidates(List.copyOf(into.vehicle().connectors().keySet()), false);
        }
        List<String> alike = connectors(one -> family.equals(one.family().orElse("")));
        if (alike.isEmpty()) {
            return new Candidates(connectors(one -> !one.family().isGiven()), false);
        }
        List<String> functions = old.plan().pins().values().stream().filter(pin -> id.equals(connectorOf(pin.id()))).map(pin -> pin.function().orElse("")).distinct().toList();
        List<String> serving = alike.stream().filter(one -> functions.stream().allMatch(function -> into.vehicle().connectors().get(one).cavities().values().stream()
                .anyMatch(cavity -> function.equals(cavity.function().orElse(""))))).toList();
        return Candidates.sure(serving.isEmpty() ? alike : serving);
    }

    private List<String> connectors(Predicate<Vehicle.Connector> which) {
        return into.vehicle().connectors().values().stream().filter(which).map(Vehicle.Connector::id).toList();
    }

    private Candidates outputs(String id) {
        Vehicle.Output output = old.vehicle().outputs().get(id);
        if (!output.kind().isGiven()) {
            return new Candidates(List.copyOf(into.vehicle().outputs().keySet()), false);
        }
        List<String> alike = outputs(one -> same(one.kind(), output.kind()) && mayBe(one.audio().carries(), output.audio().carries()));
        if (alike.isEmpty()) {
            return new Candidates(outputs(one -> !one.kind().isGiven()), false);
        }
        Set<String> there = inItsCavities(id);
        List<String> same = alike.stream().filter(there::contains).toList();
        return Candidates.sure(same.isEmpty() ? alike : same);
    }

    private List<String> outputs(Predicate<Vehicle.Output> which) {
        return into.vehicle().outputs().values().stream().filter(which).map(Vehicle.Output::id).toList();
    }

    /** What comes out of the same cavities of the same connector family in the new vehicle. */
    private Set<String> inItsCavities(String output) {
        Set<String> there = new LinkedHashSet<>();
        for (Vehicle.Connector connector : old.vehicle().connectors().values()) {
            Counterpart found = connectors.get(connector.id());
            if (found != null && found.isFound() && same(connector.family(), into.vehicle().connectors().get(found.found()).family())) {
                connector.cavities().forEach((name, cavity) -> {
                    Vehicle.Cavity other = into.vehicle().connectors().get(found.found()).cavities().get(name);
                    if (output.equals(cavity.output().orElse("")) && other != null) {
                        other.output().map(there::add);
                    }
                });
            }
        }
        return there;
    }

    private Candidates networks(String id) {
        Vehicle.Bus bus = old.vehicle().networks().get(id);
        List<Vehicle.Bus> all = new ArrayList<>(into.vehicle().networks().values());
        if (bus == null || !bus.kind().isGiven()) {
            return new Candidates(all.stream().map(Vehicle.Bus::id).toList(), false);
        }
        List<String> alike = all.stream().filter(one -> same(one.kind(), bus.kind())).map(Vehicle.Bus::id).toList();
        return alike.isEmpty() ? new Candidates(all.stream().filter(one -> !one.kind().isGiven()).map(Vehicle.Bus::id).toList(), false) : Candidates.sure(alike);
    }

    private static boolean same(Shown<String> one, Shown<String> other) {
        return one.isGiven() && other.isGiven() && one.orElse("").equals(other.orElse(""));
    }

    private static boolean mayBe(Shown<String> one, Shown<String> other) {
        return !one.isGiven() || !other.isGiven() || one.orElse("").equals(other.orElse(""));
    }

    /** Whether a hole joins a zone with itself: it belongs to a box and not to the body. */
    boolean isOfBox(String hole) {
        List<String> between = old.passThroughs().get(hole).between().orElse(List.of());
        return between.size() == SIDES && between.get(0).equals(between.get(1));
    }

    static String connectorOf(String pin) {
        return pin.substring(0, pin.indexOf('.'));
    }

    static Vehicle.Cavity cavity(Job job, String pin) {
        int dot = pin.indexOf('.');
        Vehicle.Connector connector = dot < 0 ? null : job.vehicle().connectors().get(pin.substring(0, dot));
        return connector == null ? null : connector.cavities().get(pin.substring(dot + 1));
    }

    // answers

    /** The counterpart of a place; null where the old sheet has no such place. */
    public Counterpart place(String id) {
        return places.places().get(id);
    }

    public Counterpart space(String id) {
        return places.spaces().get(id);
    }

    public Counterpart source(String id) {
        return places.sources().get(id);
    }

    public Counterpart hole(String id) {
        return holes.get(id);
    }

    public Counterpart connector(String id) {
        return connectors.get(id);
    }

    public Counterpart output(String id) {
        return outputs.get(id);
    }

    public Counterpart network(String id) {
        return networks.get(id);
    }

    /** Holes that the old job uses, with what stands for them. */
    public Map<String, Counterpart> holes() {
        return holes;
    }

    public Map<String, Counterpart> outputs() {
        return outputs;
    }

    public Map<String, Counterpart> networks() {
        return networks;
    }

    public Map<String, Counterpart> spaces() {
        return places.spaces();
    }

    public Map<String, Counterpart> places() {
        return places.places();
    }
}
