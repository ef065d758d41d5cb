package bayproof.read;

import bayproof.demand.Limits;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.vocabulary.At;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/** Binds the files of a job to records and checks that every name that one value refers to exists. */
public final class JobReader {
    static final List<String> BOOK_KEYS = List.of("bayproof", "kind", "version", "date", "parts");
    /** Keys that are read beside those of the records. */
    private static final String[] BESIDE_PLAN = {"bayproof", "kind", "items", "pass-throughs"};
    private static final String[] BESIDE_SHEET = {"bayproof", "kind", "pass-throughs"};

    private final Problems problems = new Problems();
    private final Readings readings = new Readings();
    private final Binder binder = new Binder(problems, readings);
    private final JobFiles files;
    private final Map<String, Item> items = new LinkedHashMap<>();
    /** Items that are written but could not be read: a mistake of their own, told once. */
    private final Set<String> unread = new HashSet<>();
    private final Map<String, Run> runs = new LinkedHashMap<>();
    private final Map<String, Vehicle.PassThrough> passThroughs = new LinkedHashMap<>();
    private final Map<String, Item.Harness> book = new LinkedHashMap<>();
    private final MapTree parts;
    private final Set<String> partsInUse = new HashSet<>();
    private Vehicle vehicle;

    private JobReader(JobFiles files) {
        this.files = files;
        this.parts = files.tree("parts").get("parts") instanceof MapTree map ? map
                : new MapTree(Map.of(), files.tree("parts").at());
    }

    /**
     * Binds a job.
     *
     * @throws UnusableInput when anything in it cannot be used; all mistakes are named together
     */
    public static Job bind(JobFiles files) throws UnusableInput {
        return bind(files, () -> null);
    }

    /**
     * Binds a job whose visits may name rules.
     *
     * @param rules ids of all rules, asked for where a visit names one; null where they are not known
     * @throws UnusableInput when anything in it cannot be used; all mistakes are named together
     */
    public static Job bind(JobFiles files, Supplier<Collection<String>> rules) throws UnusableInput {
        return new JobReader(files).bound(rules);
    }

    private Job bound(Supplier<Collection<String>> rules) throws UnusableInput {
        MapTree planTree = files.tree("plan");
        MapTree vehicleTree = files.tree("vehicle");
        Limits limits = LimitsReader.withShop(files.tree("limits"), problems);
        Map<String, Waiver> waivers = WaiversReader.read(files.tree("waivers"), problems);
        checkKeys(files.tree("limits"), List.of("bayproof", "kind", "limits"));
        checkKeys(files.tree("parts"), BOOK_KEYS);
        readReadings(planTree.get("calibrated-until"));
        Plan plan = binder.group(Plan.class, planTree, "", planTree.at(), BESIDE_PLAN);
        vehicle = binder.group(Vehicle.class, withoutSources(vehicleTree), "", vehicleTree.at(), BESIDE_SHEET);
        if (vehicleTree.get("supply") instanceof MapTree supply) {
            readItems(supply.get("sources"), "supply.sources");
        }
        readItems(planTree.get("items"), "items");
        readPassThroughs(vehicleTree.get("pass-throughs"), planTree.get("pass-throughs"), !vehicleTree.entries().isEmpty());
        readBook();
        addRuns(vehicle.supply().links());
        addRuns(plan.runs());
        Job job = new Job(plan, vehicle, !vehicleTree.entries().isEmpty(), Collections.unmodifiableMap(items),
                Collections.unmodifiableMap(runs), Collections.unmodifiableMap(passThroughs),
                Collections.unmodifiableMap(book), limits, readings.taken(), waivers, planTree.at());
        // Behind a key nobody knows may stand what everything else names: only the key is a mistake then.
        if (!hasStrayKey(planTree, Plan.class, BESIDE_PLAN) && !hasStrayKey(vehicleTree, Vehicle.class, BESIDE_SHEET)) {
            References references = new References(job, unread, problems);
            references.check();
            references.rules(rules);
            readings.checkAllUsed(unread, problems);
            new Possible(job, problems).check();
        }
        problems.throwIfAny();
        return job;
    }

    private static boolean hasStrayKey(MapTree tree, Class<?> type, String... beside) {
        return tree.entries().keySet().stream().anyMatch(key -> !Binder.keysOf(type).contains(key) && !List.of(beside).contains(key));
    }

    private void checkKeys(MapTree tree, List<String> known) {
        checkKeys(tree, known, problems);
    }

    static void checkKeys(MapTree tree, List<String> known, Problems problems) {
        tree.entries().values().stream().filter(entry -> !known.contains(entry.key()))
                .forEach(entry -> problems.unknown(entry.keyAt(), "a key that is known here", entry.key(), known));
    }

    private void readReadings(Tree calibrations) {
        MapTree tree = files.tree("readings");
        checkKeys(tree, List.of("bayproof", "kind", "readings"));
        Binder plain = new Binder(problems, new Readings());
        if (tree.get("readings") instanceof MapTree map) {
            map.entries().values().forEach(entry -> readings.add(plain.group(Readings.Reading.class, entry.value(),
                    "readings." + entry.key(), entry.keyAt()),
                    calibrations instanceof MapTree tools ? tools : new MapTree(Map.of(), tree.at()), problems));
        }
    }

    /** The vehicle sheet without its sources, which are items and bound like them. */
    static MapTree withoutSources(MapTree vehicleTree) {
        return vehicleTree.get("supply") instanceof MapTree supply
                ? vehicleTree.with("supply", supply.without("sources")) : vehicleTree;
    }

    private void readItems(Tree tree, String path) {
        if (tree == null || tree instanceof ScalarTree scalar && scalar.isEmpty()) {
            return;
        }
        if (!(tree instanceof MapTree map)) {
            problems.add(tree.at(), "\"" + path + "\" must be a group of names, not " + tree.noun() + ".", "");
            return;
        }
        for (Entry entry : map.entries().values()) {
            if (!Binder.ID.matcher(entry.key()).matches()) {
                problems.add(entry.keyAt(), "\"" + entry.key() + "\" is not a name.",
                        "Use lower-case letters, digits and hyphens, such as amp-front.");
            }
            Item item = item(entry, path);
            if (item == null) {
                unread.add(entry.key());
            } else if (items.putIfAbsent(entry.key(), item) != null) {
                problems.add(entry.keyAt(), "\"" + entry.key() + "\" names a source of the vehicle sheet as well.",
                        "Choose another name.");
            }
        }
    }

    private Item item(Entry entry, String path) {
        if (!(entry.value() instanceof MapTree own)) {
            problems.add(entry.keyAt(), "\"" + entry.key() + "\" must be a group of keys.",
                    "Write at least its part or its kind, such as { kind: amplifier }.");
            return null;
        }
        MapTree whole = own;
        if (own.get("part") instanceof ScalarTree name && !name.isEmpty()) {
            if (parts.get(name.text()) instanceof MapTree part) {
                whole = part.overlaidBy(own);
                partsInUse.add(name.text());
            } else {
                problems.unknown(name.at(), "a part of the parts books this plan names", name.text(), parts.entries().keySet());
                return null;
            }
        }
        return bindItem(whole, path + "." + entry.key(), entry.keyAt(), binder);
    }

    private Item bindItem(MapTree whole, String path, At at, Binder with) {
        return bindItem(with, problems, whole, path, at);
    }

    /** An item from all that is said of it; null, with a problem noted, where it does not say what kind it is. */
    static Item bindItem(Binder binder, Problems problems, MapTree whole, String path, At at) {
        Tree kind = whole.get("kind");
        if (!(kind instanceof ScalarTree word) || word.isEmpty()) {
            problems.add(at, "nothing says what kind of thing \"" + path.substring(path.lastIndexOf('.') + 1) + "\" is.",
                    "Name its part, or its kind: " + String.join(", ", Item.KINDS.keySet()) + ".");
            return null;
        }
        Class<? extends Item> type = Item.KINDS.get(word.text());
        if (type == null) {
            problems.unknown(word.at(), "a kind of item", word.text(), Item.KINDS.keySet());
            return null;
        }
        return binder.group(type, new MapTree(whole.without("kind").without("part").entries(), at), path, at);
    }

    private void readPassThroughs(Tree ofVehicle, Tree ofPlan, boolean vehicleNamed) {
        Map<String, Entry> all = new LinkedHashMap<>();
        if (ofVehicle instanceof MapTree map) {
            all.putAll(map.entries());
        }
        Collection<String> known = new TreeSet<>(all.keySet());
        if (ofPlan instanceof MapTree map) {
            for (Entry work : map.entries().values()) {
                Entry hole = all.get(work.key());
                if (hole == null && vehicleNamed) {
                    problems.unknown(work.keyAt(), "a pass-through of the vehicle sheet", work.key(), known);
                } else if (work.value() instanceof MapTree plan) {
                    MapTree base = hole != null && hole.value() instanceof MapTree sheet ? sheet : new MapTree(Map.of(), plan.at());
                    all.put(work.key(), new Entry(work.key(), work.keyAt(), base.overlaidBy(plan)));
                }
            }
        }
        all.values().forEach(entry -> passThroughs.put(entry.key(), binder.group(Vehicle.PassThrough.class, entry.value(),
                "pass-throughs." + entry.key(), entry.keyAt())));
    }

    /** What the book holds beside the parts in use is not part of the job, but a mistake in it is one all the same. */
    private void readBook() {
        Binder apart = new Binder(problems, new Readings());
        for (Entry part : parts.entries().values()) {
            if (part.value() instanceof MapTree map && map.get("part") != null) {
                problems.add(map.entries().get("part").keyAt(), "a part cannot name another part.", "Write its values themselves.");
            }
            if (part.value() instanceof MapTree map && map.get("kind") instanceof ScalarTree kind && kind.text().equals("harness")) {
                book.put(part.key(), (Item.Harness) bindItem(map, "parts." + part.key(), part.keyAt(), binder));
            } else if (!(part.value() instanceof MapTree map)) {
                problems.add(part.keyAt(), "a part is a group of keys.", "");
            } else if (!partsInUse.contains(part.key())) {
                bindItem(map, "parts." + part.key(), part.keyAt(), apart);
            }
        }
    }

    private void addRuns(Map<String, Run> more) {
        more.forEach((id, run) -> {
            if (runs.putIfAbsent(id, run) != null) {
                problems.add(run.at(), "\"" + id + "\" names a link of the vehicle sheet as well.", "Choose another name.");
            }
        });
    }

    /** Whether a job holds anything that can be judged. */
    public static boolean isEmpty(Job job) {
        return job.plan().runs().isEmpty() && job.items().values().stream().allMatch(item -> item.path().startsWith("supply."));
    }
}
