package bayproof.refit;

import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Tells whose row a path of the new job belongs to. */
final class Owners {
    static final String JOB = "job";
    /** What the new sheet says of the vehicle as such belongs to the row of whatever asks for it. */
    private static final Set<String> OF_WHO_ASKS = Set.of("zones", "places", "keep-outs", "connectors", "radio", "restraints", "parts", "numbers");

    private final Job old;
    private final Job into;
    private final Counterparts counterparts;
    private final List<String> mountRules;
    private final Map<String, String> kinds = new TreeMap<>();

    /** @param old the old job, whose names the rows bear */
    Owners(Job old, Job into, Counterparts counterparts, List<String> mountRules) {
        this.old = old;
        this.into = into;
        this.counterparts = counterparts;
        this.mountRules = mountRules;
        old.items().values().stream().filter(item -> item.path().startsWith("items.")).forEach(item -> kinds.put(item.id(), Rows.kind(item)));
    }

    /** Rows that a subject or a missing value belongs to, by kind and name; empty where it belongs to whoever asks. */
    List<String> of(String path, String rule) {
        String[] keys = path.split("\\.");
        if (path.equals("buses") && !counterparts.networks().isEmpty()) {
            return counterparts.networks().keySet().stream().map(id -> "bus " + id).toList();
        }
        if (keys.length == 1) {
            return OF_WHO_ASKS.contains(path) || List.of("runs", "items", "pins").contains(path) ? List.of() : List.of(JOB + " " + path);
        }
        return switch (keys[0]) {
            case "items" -> List.of(keys.length > 2 && keys[2].equals("mount") || mountRules.contains(rule) ? "mount " + keys[1] : item(keys[1]));
            case "runs" -> List.of("run " + keys[1]);
            case "settings" -> List.of("setting " + keys[1] + "." + (keys.length > 2 ? keys[2] : ""));
            case "speaker-wiring" -> List.of(item(keys[1]));
            case "pins" -> pin(keys);
            case "pass-throughs" -> named("hole", keys[1], counterparts.holes());
            case "networks", "buses" -> named("bus", keys[1], counterparts.networks());
            case "audio-inputs" -> List.of("channel " + keys[1]);
            case "outputs" -> channels(keys[1]);
            case "spaces" -> enclosures(keys[1]);
            case "routes" -> along(keys[1]);
            case "job" -> List.of(JOB + " booking");
            default -> OF_WHO_ASKS.contains(keys[0]) ? List.of() : List.of(JOB + " " + keys[0]);
        };
    }

    private String item(String id) {
        return kinds.containsKey(id) ? kinds.get(id) + " " + id : JOB + " supply";
    }

    private List<String> pin(String[] keys) {
        String id = keys.length < 3 ? "" : keys[1] + "." + keys[2];
        Plan.PinUse pin = into.plan().pins().getOrDefault(id, old.plan().pins().get(id));
        String terminal = pin == null ? "" : pin.connectedTo().orElse("");
        return terminal.contains(".") ? List.of(item(terminal.substring(0, terminal.indexOf('.')))) : List.of(JOB + " pins");
    }

    private List<String> named(String kind, String id, Map<String, Counterpart> all) {
        List<String> rows = all.values().stream().filter(one -> id.equals(one.found())).map(one -> kind + " " + one.old()).toList();
        return rows.isEmpty() ? List.of(kind + " " + id) : rows;
    }

    private List<String> channels(String output) {
        List<String> rows = into.plan().audioInputs().values().stream().filter(input -> input.of().orElse(List.of()).contains(output))
                .map(input -> "channel " + input.id()).toList();
        return rows.isEmpty() ? List.of(JOB + " outputs") : rows;
    }

    private List<String> enclosures(String space) {
        List<String> rows = new ArrayList<>();
        counterparts.spaces().values().stream().filter(one -> space.equals(one.found())).forEach(one -> into.itemsOf(Item.Enclosure.class).stream()
                .filter(box -> space.equals(box.space().orElse(""))).forEach(box -> rows.add("enclosure " + box.id())));
        return rows;
    }

    private List<String> along(String route) {
        return into.plan().runs().values().stream().filter(run -> run.along().orElse(List.of()).contains(route)).map(Run::id).map(id -> "run " + id).toList();
    }
}
