package bayproof.refit;

import bayproof.read.Choices;
import bayproof.read.Item;
import bayproof.read.Job;
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
import java.util.function.UnaryOperator;

/**
 * Where things go in the new vehicle. A source is sought by its kind; a space by its zone and by whether its box would go in; the place of
 * a battery by its battery, that of a box by its space; a ground by its site and by how near it is to what it grounds; any other place by
 * its zone and by whether what is mounted there fits.
 */
final class PlaceMatches {
    private final Job old;
    private final Job into;
    private final Ways ways;
    private final Map<String, Counterpart> sources;
    private final Map<String, Counterpart> spaces;
    private final Map<String, Counterpart> places;

    PlaceMatches(Job old, Job into, Ways ways, Choices.Decided choices) {
        this.old = old;
        this.into = into;
        this.ways = ways;
        this.sources = new Matcher(choices.sources(), this::sources, id -> Zones.kindOf(old.items().get(id))).match(usedSources());
        this.spaces = new Matcher(choices.spaces(), this::spaces, id -> "space in a zone of the kind " + zoneWord(spacePlace(old, id))).match(usedSpaces());
        Set<String> grounds = new LinkedHashSet<>();
        Set<String> others = new LinkedHashSet<>();
        usedPlaces().forEach(id -> (isGround(id) ? grounds : others).add(id));
        this.places = new LinkedHashMap<>(new Matcher(choices.places(), this::places, id -> "place in a zone of the kind " + zoneWord(id)).match(others));
        places.putAll(new Matcher(choices.places(), this::grounds, id -> "ground site in a zone of the kind " + zoneWord(id)).match(grounds));
    }

    private String zoneWord(String place) {
        String kind = Zones.kindOfZone(old, place);
        return kind.isEmpty() ? "that nobody wrote" : kind;
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

    private List<Item> at(String place) {
        return old.items().values().stream().filter(item -> place.equals(item.place().orElse(""))).toList();
    }

    private boolean isGround(String place) {
        return at(place).stream().anyMatch(Item.GroundPoint.class::isInstance);
    }

    // what may serve

    private Candidates sources(String id) {
        return Candidates.sure(into.items().values().stream().filter(item -> item.getClass() == old.items().get(id).getClass()).map(Item::id).toList());
    }

    private Candidates spaces(String id) {
        Candidates alike = inZonesLike(spacePlace(old, id), into.vehicle().spaces().keySet(), space -> spacePlace(into, space));
        List<Item.Enclosure> boxes = old.itemsOf(Item.Enclosure.class).stream().filter(box -> id.equals(box.space().orElse(""))).toList();
        List<String> roomy = alike.names().stream().filter(space -> boxes.stream().allMatch(box -> Room.takes(into.vehicle().spaces().get(space), box))).toList();
        return roomy.isEmpty() ? alike : new Candidates(roomy, alike.sure());
    }

    private Candidates places(String id) {
        for (Counterpart source : sources.values()) {
            if (source.isFound() && id.equals(old.items().get(source.old()).place().orElse("")) && into.items().get(source.found()).place().isGiven()) {
                return Candidates.sure(List.of(into.items().get(source.found()).place().orElse("")));
            }
        }
        for (Counterpart space : spaces.values()) {
            if (space.isFound() && id.equals(spacePlace(old, space.old())) && !spacePlace(into, space.found()).isEmpty()) {
                return Candidates.sure(List.of(spacePlace(into, space.found())));
            }
        }
        Candidates alike = alike(id);
        List<String> free = alike.names().stream().filter(place -> !isGroundSite(place)).toList();
        return new Candidates(Room.best(free.isEmpty() ? alike.names() : free, place -> Room.fit(into.vehicle().places().get(place), at(id))), alike.sure());
    }

    private Candidates grounds(String id) {
        Candidates alike = alike(id);
        List<String> sites = alike.names().stream().filter(this::isGroundSite).toList();
        List<String> all = sites.isEmpty() ? alike.names() : sites;
        return new Candidates(all.size() < 2 ? all : nearest(id, all), alike.sure());
    }

    private Candidates alike(String place) {
        return inZonesLike(place, into.vehicle().places().keySet(), one -> one);
    }

    /** Those in zones of the kind of a place; where none is, those whose zone has no kind yet. */
    private Candidates inZonesLike(String place, Collection<String> all, UnaryOperator<String> placeOf) {
        String kind = Zones.kindOfZone(old, place);
        if (kind.isEmpty()) {
            return new Candidates(List.copyOf(all), false);
        }
        List<String> alike = all.stream().filter(one -> kind.equals(Zones.kindOfZone(into, placeOf.apply(one)))).toList();
        return alike.isEmpty() ? new Candidates(all.stream().filter(one -> Zones.kindOfZone(into, placeOf.apply(one)).isEmpty()).toList(), false) : Candidates.sure(alike);
    }

    private boolean isGroundSite(String place) {
        return into.vehicle().places().get(place).ground().structure().isGiven();
    }

    /** The site with the shortest measured ways to everything that it grounds; all of them while one of these ways is not known. */
    private List<String> nearest(String id, List<String> sites) {
        List<String> grounded = new ArrayList<>();
        for (Run run : old.plan().runs().values()) {
            Item from = item(run.from());
            Item to = item(run.to());
            boolean here = from != null && id.equals(from.place().orElse(""));
            Item far = here ? to : to != null && id.equals(to.place().orElse("")) ? from : null;
            Counterpart there = far == null ? null : places.get(far.place().orElse(""));
            if (there != null && there.isFound()) {
                grounded.add(there.found());
            }
        }
        Map<String, Double> metres = new LinkedHashMap<>();
        sites.forEach(site -> metres.put(site, grounded.stream().mapToDouble(place -> ways.metres(site, place)).sum()));
        double least = metres.values().stream().mapToDouble(Double::doubleValue).min().orElse(Double.POSITIVE_INFINITY);
        List<String> near = sites.stream().filter(site -> metres.get(site) <= least).toList();
        return grounded.isEmpty() || Double.isInfinite(least) ? sites : near;
    }

    private Item item(Shown<String> terminal) {
        return old.itemOf(terminal.orElse(""));
    }

    private static String spacePlace(Job job, String space) {
        Vehicle.Space known = job.vehicle().spaces().get(space);
        return known == null ? "" : known.place().orElse("");
    }

    // answers

    Map<String, Counterpart> sources() {
        return sources;
    }

    Map<String, Counterpart> spaces() {
        return spaces;
    }

    Map<String, Counterpart> places() {
        return places;
    }
}
