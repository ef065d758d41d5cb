package bayproof.review;

import bayproof.judge.Judgment;
import bayproof.judge.RuleInfo;
import bayproof.judge.Verdict;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The part of a job that somebody wants to see: some topics, some items, some zones. Several of one sort are joined by
 * or, the sorts by and; none of a sort leaves it open.
 */
public final class Focus {
    private final List<String> topics;
    private final List<String> items;
    private final List<String> zones;
    private final Set<String> ofItems = new TreeSet<>();
    private final Set<String> ofZones = new TreeSet<>();
    private final Job job;

    private Focus(Job job, List<String> topics, List<String> items, List<String> zones) {
        this.job = job;
        this.topics = List.copyOf(topics);
        this.items = List.copyOf(items);
        this.zones = List.copyOf(zones);
        items.forEach(this::addItem);
        zones.forEach(this::addZone);
    }

    /** What is shown of a job; every name is one that the job and the rule base know. */
    public static Focus of(Job job, List<String> topics, List<String> items, List<String> zones) {
        return new Focus(job, topics, items, zones);
    }

    public List<String> topics() {
        return topics;
    }

    public List<String> items() {
        return items;
    }

    public List<String> zones() {
        return zones;
    }

    /** What is shown, as a phrase. */
    public String words() {
        List<String> parts = new ArrayList<>();
        add(parts, "topic", topics);
        add(parts, "item", items);
        add(parts, "zone", zones);
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, String noun, List<String> names) {
        if (!names.isEmpty()) {
            parts.add(noun + (names.size() == 1 ? " " : "s ") + String.join(" and ", names));
        }
    }

    public boolean shows(Verdict verdict) {
        return shows(verdict.rule(), verdict.subject());
    }

    /** A rule that found nothing of its kind has no subject: it is shown with its topic, and with no item or zone. */
    public boolean shows(Judgment.NotApplicable one) {
        return shows(one.rule(), one.subject());
    }

    /** Whether a verdict of this rule on this subject is shown. */
    public boolean shows(RuleInfo rule, String subject) {
        return (topics.isEmpty() || topics.contains(rule.topic()))
                && (items.isEmpty() || isUnder(subject, ofItems)) && (zones.isEmpty() || isUnder(subject, ofZones));
    }

    private static boolean isUnder(String subject, Collection<String> paths) {
        return subject != null && paths.stream().anyMatch(path -> subject.equals(path) || subject.startsWith(path + "."));
    }

    // items

    private void addItem(String id) {
        ofItems.add(job.items().get(id).path());
        job.runs().values().stream().filter(run -> isOf(id, run.from()) || isOf(id, run.to())).forEach(run -> ofItems.add(run.path()));
        job.plan().speakerWiring().values().stream().filter(wiring -> wiringItems(wiring).contains(id))
                .forEach(wiring -> ofItems.add(wiring.path()));
        job.plan().pins().values().stream().filter(pin -> isOf(id, pin.connectedTo())).forEach(pin -> ofItems.add(pin.path()));
    }

    private static boolean isOf(String id, Shown<String> terminal) {
        return itemOf(terminal.orElse("")).equals(id);
    }

    private static String itemOf(String terminal) {
        int dot = terminal.indexOf('.');
        return dot < 0 ? "" : terminal.substring(0, dot);
    }

    /** The amplifier a wiring is named after and the speakers whose coils it joins. */
    private static Set<String> wiringItems(Plan.Wiring wiring) {
        Set<String> ids = new TreeSet<>();
        ids.add(itemOf(wiring.id()));
        // Coils are named like terminals; whatever else stands in the text of a net is no name.
        for (String word : wiring.net().orElse("").split("[^a-z0-9.-]+")) {
            ids.add(itemOf(word));
        }
        return ids;
    }

    // zones

    private void addZone(String id) {
        Vehicle vehicle = job.vehicle();
        ofZones.add(vehicle.zones().get(id).path());
        Set<String> inside = new TreeSet<>();
        for (Item item : job.items().values()) {
            if (zonesOf(item.place().orElse("")).contains(id)) {
                inside.add(item.id());
                ofZones.add(item.path());
            }
        }
        job.runs().values().stream().filter(run -> passes(run, id, inside)).forEach(run -> ofZones.add(run.path()));
        job.passThroughs().values().stream().filter(hole -> hole.between().orElse(List.of()).contains(id))
                .forEach(hole -> ofZones.add(hole.path()));
        vehicle.places().values().stream().filter(place -> id.equals(place.zone().orElse(""))).forEach(place -> ofZones.add(place.path()));
        vehicle.routes().values().stream().filter(route -> isIn(route, id)).forEach(route -> ofZones.add(route.path()));
        vehicle.keepOuts().values().stream().filter(one -> one.zones().orElse(List.of()).contains(id)).forEach(one -> ofZones.add(one.path()));
        vehicle.spaces().values().stream().filter(space -> zonesOf(space.place().orElse("")).contains(id))
                .forEach(space -> ofZones.add(space.path()));
        job.plan().speakerWiring().values().stream().filter(wiring -> wiringItems(wiring).stream().anyMatch(inside::contains))
                .forEach(wiring -> ofZones.add(wiring.path()));
        job.plan().pins().values().stream().filter(pin -> inside.contains(itemOf(pin.connectedTo().orElse(""))))
                .forEach(pin -> ofZones.add(pin.path()));
    }

    private boolean passes(Run run, String zone, Set<String> inside) {
        return inside.contains(itemOf(run.from().orElse(""))) || inside.contains(itemOf(run.to().orElse("")))
                || run.along().orElse(List.of()).stream().anyMatch(id -> job.vehicle().routes().containsKey(id)
                && isIn(job.vehicle().routes().get(id), zone))
                || run.through().orElse(List.of()).stream().anyMatch(id -> job.passThroughs().containsKey(id)
                && job.passThroughs().get(id).between().orElse(List.of()).contains(zone));
    }

    /** A route lies in the one zone that both its ends belong to; where an end is not known, in each zone of the other. */
    private boolean isIn(Vehicle.Route route, String zone) {
        List<Set<String>> ends = route.between().orElse(List.of()).stream().map(this::zonesOf).filter(zones -> !zones.isEmpty()).toList();
        return !ends.isEmpty() && ends.stream().allMatch(zones -> zones.contains(zone));
    }

    /** The zone of a place, or both zones of a pass-through. */
    private Set<String> zonesOf(String place) {
        Set<String> zones = new TreeSet<>();
        if (job.vehicle().places().containsKey(place)) {
            String zone = job.vehicle().places().get(place).zone().orElse("");
            if (!zone.isEmpty()) {
                zones.add(zone);
            }
        } else if (job.passThroughs().containsKey(place)) {
            zones.addAll(job.passThroughs().get(place).between().orElse(List.of()));
        }
        return zones;
    }
}
