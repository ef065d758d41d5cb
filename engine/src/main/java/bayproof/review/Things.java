package bayproof.review;

import bayproof.read.Address;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.JobFiles;
import bayproof.read.Run;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Shown;
import java.util.List;

/** Tells which thing has to be looked at for a fact, and where it is. */
final class Things {
    private static final String SOURCES = "supply.sources.";
    private static final String LINKS = "supply.links.";

    private final JobFiles files;
    private final Job job;

    Things(JobFiles files, Job job) {
        this.files = files;
        this.job = job;
    }

    /**
     * The thing to look at.
     *
     * @param path    path of the fact
     * @param address where its answer is written; null where no file holds it
     */
    Thing of(String path, Address address) {
        if (address == null) {
            return new Thing("taken", "values that only a shop limit can narrow", Body.DESK);
        }
        List<String> keys = address.keys();
        String first = keys.get(0);
        if (keys.size() == 1) {
            return root(first, address);
        }
        String id = keys.get(1);
        if (first.equals("items") || path.startsWith(SOURCES)) {
            return item(first.equals("items") ? id : keys.get(2), keys.get(first.equals("items") ? 2 : 3));
        }
        if (first.equals("runs") || path.startsWith(LINKS)) {
            return run(first.equals("runs") ? id : keys.get(2), first.equals("runs") ? keys.subList(2, keys.size()) : List.of());
        }
        return switch (first) {
            case "parts" -> new Thing("parts." + id, id + ": data sheet", Body.BENCH);
            case "waivers" -> new Thing("waivers." + id, "waiver " + id + ": whoever decides", Body.DESK);
            case "pins" -> connector(id.substring(0, id.indexOf('.')));
            case "connectors" -> connector(id);
            case "radio" -> new Thing(first, "the factory radio", Body.RADIO);
            case "outputs" -> new Thing("outputs." + id, "factory output " + id, Body.RADIO);
            case "networks", "buses" -> new Thing("networks." + id, "data bus " + id, Body.RADIO);
            case "supply" -> new Thing(first, "the vehicle's own supply", Body.HOOD);
            case "restraints" -> new Thing(first, "the restraint system: label or service data", Body.DESK);
            case "pass-throughs" -> new Thing("pass-throughs." + id, "hole " + id, hole(id));
            case "routes" -> new Thing("routes." + id, "way " + id, routeBody(id));
            case "places" -> new Thing("places." + id, "place " + id, place(id));
            case "zones" -> new Thing("zones." + id, "zone " + id, zone(id));
            case "spaces" -> new Thing("spaces." + id, "space " + id, job.vehicle().spaces().containsKey(id)
                    ? place(job.vehicle().spaces().get(id).place().orElse("")) : Body.VEHICLE);
            case "keep-outs" -> new Thing("keep-outs." + id, "keep-out " + id, job.vehicle().keepOuts().containsKey(id)
                    ? first(job.vehicle().keepOuts().get(id).zones()) : Body.VEHICLE);
            case "found" -> new Thing("found." + id, "found: " + id, Body.VEHICLE);
            case "steps" -> new Thing(first, "the order of work", Body.DESK);
            case "speaker-wiring" -> new Thing("speaker-wiring." + id, "what hangs on " + id, Body.DESK);
            case "settings" -> new Thing("settings." + id, "settings of " + id, Body.DESK);
            default -> new Thing(first, first, Body.DESK);
        };
    }

    /** The path of a fact, or where all items of one part have the same value, the path in the parts book. */
    String shared(String path) {
        String[] keys = path.split("\\.");
        int depth = path.startsWith("items.") ? 1 : path.startsWith(SOURCES) ? 2 : 0;
        Item item = depth > 0 && keys.length > depth + 1 ? job.items().get(keys[depth]) : null;
        String part = item == null || Looks.built().isFitted(keys[depth + 1]) || isOwn(item, keys[depth + 1]) ? null : part(item);
        return part == null ? path : "parts." + part + path.substring(item.path().length());
    }

    /** Whether the item says a key itself, in place of its part. */
    private boolean isOwn(Item item, String key) {
        return Address.at(files.tree(item.path().startsWith("items.") ? "plan" : "vehicle"), List.of((item.path() + "." + key).split("\\."))) != null;
    }

    private static Thing root(String key, Address address) {
        return switch (key) {
            case "runs" -> new Thing(key, "runs that the plan does not name yet", Body.DESK);
            case "items" -> new Thing(key, "items that the plan does not name yet", Body.DESK);
            case "steps" -> new Thing(key, "the order of work", Body.DESK);
            case "found" -> new Thing(key, "what is in the vehicle already", Body.VEHICLE);
            case "keep-outs" -> new Thing(key, "what cables and boxes must stay away from", Body.UNDER);
            case "pins", "speaker-wiring" -> new Thing(key, key + " that the plan does not name yet", Body.DESK);
            default -> address.kind().equals("vehicle") ? new Thing(key, address.says(), Body.VEHICLE)
                    : new Thing("plan", "the plan as a whole", Body.DESK);
        };
    }

    private Thing item(String id, String key) {
        Item item = job.items().get(id);
        if (item == null) {
            return new Thing("items", "items that the plan does not name yet", Body.DESK);
        }
        if (Looks.built().isFitted(key)) {
            return new Thing(item.path(), id + ", as it is fitted", place(item.place().orElse("")));
        }
        String part = part(item);
        return part == null ? new Thing(item.path() + " sheet", id + ": data sheet or label", Body.BENCH)
                : new Thing("parts." + part, part + ": data sheet", Body.BENCH);
    }

    private String part(Item item) {
        boolean planned = item.path().startsWith("items.");
        return Address.at(files.tree(planned ? "plan" : "vehicle"), List.of((item.path() + ".part").split("\\."))) instanceof ScalarTree name
                && !name.isEmpty() ? name.text() : null;
    }

    private Thing run(String id, List<String> below) {
        Run run = job.runs().get(id);
        if (run == null) {
            return new Thing("runs", "runs that the plan does not name yet", Body.DESK);
        }
        if (below.size() < 3 || !below.get(0).equals("ends")) {
            return new Thing(run.path(), "cable " + id + " and its way", terminal(run.from()));
        }
        Shown<String> end = below.get(1).equals("from") ? run.from() : run.to();
        return new Thing(run.path() + ".ends." + below.get(1), "end of " + id + " at " + end.orElse("a terminal not named yet"), terminal(end));
    }

    private static Thing connector(String id) {
        return new Thing("connectors." + id, "connector " + id, Body.RADIO);
    }

    // where it is

    private Body terminal(Shown<String> terminal) {
        Item item = job.itemOf(terminal.orElse(""));
        return item == null ? Body.VEHICLE : place(item.place().orElse(""));
    }

    private Body place(String id) {
        Vehicle.Place place = job.vehicle().places().get(id);
        return place == null ? Body.VEHICLE : zone(place.zone().orElse(""));
    }

    private Body zone(String id) {
        Vehicle.Zone zone = job.vehicle().zones().get(id);
        return zone == null ? Body.VEHICLE : Body.ofZone(zone.kind().orElse(""));
    }

    private Body hole(String id) {
        return job.passThroughs().containsKey(id) ? first(job.passThroughs().get(id).between()) : Body.VEHICLE;
    }

    private Body first(Shown<List<String>> zones) {
        return zones.orElse(List.of()).stream().map(this::zone).filter(body -> body != Body.VEHICLE).findFirst().orElse(Body.VEHICLE);
    }

    private Body routeBody(String id) {
        Vehicle.Route route = job.vehicle().routes().get(id);
        return route == null ? Body.VEHICLE : route.between().orElse(List.of()).stream()
                .map(end -> job.passThroughs().containsKey(end) ? hole(end) : place(end))
                .filter(body -> body != Body.VEHICLE).findFirst().orElse(Body.VEHICLE);
    }
}
