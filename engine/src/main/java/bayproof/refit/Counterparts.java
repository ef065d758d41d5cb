package bayproof.refit;

import bayproof.graph.BodyGraph;
import bayproof.read.Choices;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What stands in the new vehicle for each thing of the old one that the job uses. A thing is sought by what it serves for: the place of
 * a battery by its battery, the place of a box by its space, a ground by its site, a hole by the kinds of zones it joins.
 */
public final class Counterparts {
    private static final int SIDES = 2;

    private final Job old;
    private final Job into;
    private final Map<String, Counterpart> sources;
    private final Map<String, Counterpart> spaces;
    private final Map<String, Counterpart> places;
    private final Map<String, Counterpart> holes;
    private final Map<String, Counterpart> connectors;
    private final Map<String, Counterpart> outputs;
    private final Map<String, Counterpart> networks;

    Counterparts(Job old, Job into, Choices.Decided choices) {
        this.old = old;
        this.into = into;
        this.sources = new Matcher(choices.sources(), this::sources, id -> kindOf(old.items().get(id))).match(usedSources());
        this.spaces = new Matcher(choices.spaces(), this::spaces, id -> "space in a zone of the kind " + kindOfZone(old, spacePlace(old, id))).match(usedSpaces());
        this.places = new Matcher(choices.places(), this::places, id -> "place in a zone of the kind " + kindOfZone(old, id)).match(usedPlaces());
        this.holes = new Matcher(choices.holes(), this::holes, id -> "hole between " + String.join(" and ", kindsBeside(old, id))).match(usedHoles());
        this.connectors = new Matcher(choices.connectors(), this::connectors, id -> "connector of the family "
                + old.vehicle().connectors().get(id).family().orElse("that nobody wrote")).match(usedConnectors());
        this.outputs = new Matcher(choices.outputs(), this::outputs, id -> "output of the kind " + old.vehicle().outputs().get(id).kind().orElse("that nobody wrote"))
                .match(usedOutputs());
        this.networks = new Matcher(choices.networks(), this::networks, id -> "data bus of the kind "
                + (old.vehicle().networks().containsKey(id) ? old.vehicle().networks().get(id).kind().orElse("that nobody wrote") : "that nobody wrote"))
                .match(old.plan().buses().map(Map::keySet).orElse(Set.of()));
    }

    // what the job uses

    private Collection<String> usedSources() {
        return old.items().values().stream().filter(item -> item.path().startsWith("supply.")).map(Item::id).toList();
    }

    private Collection<String> usedSpaces() {
        Set<String> used = new LinkedHashSet<>();
        old.itemsOf(Item.Enclosure.class).forEach(box -> box.space().map(used::add));
        used.retainAll(old.vehicle().spaces().keySet());
        return used;
    }

    private Collection<String> usedPlaces() {
        Set<String> used = new LinkedHashSet<>();
        old.items().values().forEach(item -> item.place().map(used::add));
        used.retainAll(old.vehicle().places().keySet());
        return used;
    }

    private Collection<String> usedHoles() {
        Set<String> used = new LinkedHashSet<>();
        BodyGraph body = new BodyGraph(old);
        for (Run run : old.plan().runs().values()) {
            used.addAll(run.through().orElse(List.of()));
            used.addAll(body.holesOnRoutes(run));
        }
        used.retainAll(old.passThroughs().keySet());
        return used;
    }

    private Collection<String> usedConnectors() {
        Set<String> used = new LinkedHashSet<>();
        old.plan().pins().keySet().forEach(pin -> used.add(pin.substring(0, pin.indexOf('.'))));
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

    private List<String> sources(String id) {
        return into.items().values().stream().filter(item -> item.getClass() == old.items().get(id).getClass()).map(Item::id).toList();
    }

    private List<String> spaces(String id) {
        String kind = kindOfZone(old, spacePlace(old, id));
        List<String> alike = into.vehicle().spaces().keySet().stream().filter(space -> isKind(spacePlace(into, space), kind)).toList();
        List<Item.Enclosure> boxes = old.itemsOf(Item.Enclosure.class).stream().filter(box -> id.equals(box.space().orElse(""))).toList();
        List<String> roomy = alike.stream().filter(space -> boxes.stream().allMatch(box -> Room.takes(into.vehicle().spaces().get(space), box))).toList();
        return roomy.isEmpty() ? alike : roomy;
    }

    private List<String> places(String id) {
        String kind = kindOfZone(old, id);
        for (Counterpart source : sources.values()) {
            if (source.isFound() && id.equals(old.items().get(source.old()).place().orElse("")) && into.items().get(source.found()).place().isGiven()) {
                return List.of(into.items().get(source.found()).place().orElse(""));
            }
        }
        for (Counterpart space : spaces.values()) {
            if (space.isFound() && id.equals(spacePlace(old, space.old())) && !spacePlace(into, space.found()).isEmpty()) {
                return List.of(spacePlace(into, space.found()));
            }
        }
        List<String> alike = into.vehicle().places().keySet().stream().filter(place -> isKind(place, kind)).toList();
        List<String> grounds = alike.stream().filter(place -> into.vehicle().places().get(place).ground().structure().isGiven()).toList();
        boolean ground = old.itemsOf(Item.GroundPoint.class).stream().anyMatch(point -> id.equals(point.place().orElse("")));
        return grounds.isEmpty() ? alike : ground ? grounds : alike.stream().filter(place -> !grounds.contains(place)).toList();
    }

    private List<String> holes(String id) {
        List<String> kinds = kindsBeside(old, id);
        return kinds.size() < SIDES ? List.of() : into.passThroughs().keySet().stream().filter(hole -> kindsBeside(into, hole).equals(kinds)).toList();
    }

    private List<String> connectors(String id) {
        String family = old.vehicle().connectors().get(id).family().orElse("");
        return into.vehicle().connectors().values().stream().filter(one -> !family.isEmpty() && family.equals(one.family().orElse(""))).map(Vehicle.Connector::id).toList();
    }

    private List<String> outputs(String id) {
        Vehicle.Output output = old.vehicle().outputs().get(id);
        return into.vehicle().outputs().values().stream().filter(one -> same(one.kind(), output.kind()) && mayBe(one.audio().carries(), output.audio().carries()))
                .map(Vehicle.Output::id).toList();
    }

    private List<String> networks(String id) {
        Vehicle.Bus bus = old.vehicle().networks().get(id);
        return bus == null ? List.of() : into.vehicle().networks().values().stream().filter(one -> same(one.kind(), bus.kind())).map(Vehicle.Bus::id).toList();
    }

    private static boolean same(Shown<String> one, Shown<String> other) {
        return one.isGiven() && other.isGiven() && one.orElse("").equals(other.orElse(""));
    }

    private static boolean mayBe(Shown<String> one, Shown<String> other) {
        return !one.isGiven() || !other.isGiven() || one.orElse("").equals(other.orElse(""));
    }

    // kinds

    private boolean isKind(String place, String kind) {
        return !kind.isEmpty() && kindOfZone(into, place).equals(kind);
    }

    /** Kind of the zone of a place; an empty word where nobody wrote it. */
    static String kindOfZone(Job job, String place) {
        Vehicle.Place known = job.vehicle().places().get(place);
        Vehicle.Zone zone = known == null ? null : job.vehicle().zones().get(known.zone().orElse(""));
        return zone == null ? "" : zone.kind().orElse("");
    }

    private static List<String> kindsBeside(Job job, String hole) {
        List<String> kinds = new ArrayList<>();
        for (String id : job.passThroughs().get(hole).between().orElse(List.of())) {
            Vehicle.Zone zone = job.vehicle().zones().get(id);
            zoneKind(zone, kinds);
        }
        Collections.sort(kinds);
        return kinds;
    }

    private static void zoneKind(Vehicle.Zone zone, List<String> kinds) {
        if (zone != null) {
            zone.kind().map(kinds::add);
        }
    }

    /** Whether a hole joins a zone with itself: it belongs to a box and not to the body. */
    boolean isOfBox(String hole) {
        List<String> between = old.passThroughs().get(hole).between().orElse(List.of());
        return between.size() == SIDES && between.get(0).equals(between.get(1));
    }

    private static String spacePlace(Job job, String space) {
        Vehicle.Space known = job.vehicle().spaces().get(space);
        return known == null ? "" : known.place().orElse("");
    }

    /** The word that files use for the kind of an item. */
    static String kindOf(Item item) {
        return Item.KINDS.entrySet().stream().filter(kind -> kind.getValue() == item.getClass()).map(Map.Entry::getKey).findFirst().orElse("item");
    }

    static Vehicle.Cavity cavity(Job job, String pin) {
        int dot = pin.indexOf('.');
        Vehicle.Connector connector = dot < 0 ? null : job.vehicle().connectors().get(pin.substring(0, dot));
        return connector == null ? null : connector.cavities().get(pin.substring(dot + 1));
    }

    // answers

    /** The counterpart of a place; null where the old sheet has no such place. */
    public Counterpart place(String id) {
        return places.get(id);
    }

    public Counterpart space(String id) {
        return spaces.get(id);
    }

    public Counterpart source(String id) {
        return sources.get(id);
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
        return spaces;
    }
}
