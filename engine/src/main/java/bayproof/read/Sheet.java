package bayproof.read;

import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.vocabulary.At;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A parts book or a vehicle sheet, read without a plan.
 *
 * @param kind    parts or vehicle
 * @param tree    the file
 * @param entries its parts, or the sections of the vehicle sheet
 */
public record Sheet(String kind, MapTree tree, List<Entry> entries) {
    /** Kinds of file that can be read alone. */
    public static final List<String> KINDS = List.of("parts", "vehicle");

    /**
     * One part or section.
     *
     * @param name name of the part or section
     * @param kind kind of item; of a section of the vehicle sheet "section"
     * @param at   where it begins
     * @param gaps what it does not say
     */
    public record Entry(String name, String kind, At at, List<Gap> gaps) {
        public Entry {
            gaps = List.copyOf(gaps);
        }
    }

    /**
     * A value that is not given.
     *
     * @param where   the group it belongs to: an item kind in a parts book or for a source, otherwise {@code vehicle}
     * @param key     its keys below the part, or from the top of the vehicle sheet
     * @param pattern the same with an asterisk in place of each name that the file itself chose
     * @param ask     what it is, as a short phrase
     * @param at      where it would stand
     */
    public record Gap(String where, String key, String pattern, String ask, At at) {
    }

    /** The group of a value of the vehicle sheet that belongs to no item. */
    public static final String VEHICLE = "vehicle";

    public Sheet {
        entries = List.copyOf(entries);
    }

    /** What kind of file it says it is; a plan where it says nothing. */
    public static String kindOf(Path file) throws UnusableInput {
        return JobFiles.isTable(file.toString()) ? "parts" : TreeReader.read(file, file.toString()).get("kind") instanceof ScalarTree word ? word.text() : "plan";
    }

    /**
     * Reads a parts book or vehicle sheet.
     *
     * @param kind which of both
     * @throws UnusableInput when anything in it cannot be used; all mistakes are named together
     */
    public static Sheet read(Path file, String kind) throws UnusableInput {
        if (kind.equals("vehicle")) {
            return vehicle(TreeReader.read(file, file.toString()));
        }
        Problems problems = new Problems();
        MapTree tree = JobFiles.wholeBook(file, problems);
        problems.throwIfAny();
        List<Entry> entries = parts(tree, new Binder(problems, new Readings()), problems);
        problems.throwIfAny();
        return new Sheet(kind, tree, entries);
    }

    /** A vehicle sheet that was read elsewhere; otherwise the same. */
    static Sheet vehicle(MapTree tree) throws UnusableInput {
        Problems problems = new Problems();
        JobFiles.checkHead(tree, VEHICLE, problems);
        List<Entry> entries = sections(tree, new Binder(problems, new Readings()), problems);
        problems.throwIfAny();
        return new Sheet(VEHICLE, tree, entries);
    }

    private static List<Entry> parts(MapTree tree, Binder binder, Problems problems) {
        JobReader.checkKeys(tree, JobReader.BOOK_KEYS, problems);
        List<Entry> entries = new ArrayList<>();
        if (!(tree.get("parts") instanceof MapTree parts)) {
            problems.add(tree.at(), "this parts book has no \"parts\".", "Write them as a group of names, such as parts: { amp: { kind: amplifier } }.");
            return entries;
        }
        for (Tree.Entry part : parts.entries().values()) {
            if (!(part.value() instanceof MapTree map)) {
                problems.add(part.keyAt(), "a part is a group of keys.", "");
                continue;
            }
            if (JobFiles.isAddition(part)) {
                // What a job adds to a part of another book: which kind that is, only the plan's books together say.
                continue;
            }
            Item item = JobReader.bindItem(binder, problems, map, part.key(), part.keyAt());
            if (item != null) {
                String kind = ((ScalarTree) map.get("kind")).text();
                entries.add(new Entry(part.key(), kind, part.keyAt(), gaps(kind, Gaps.of((Record) item, map, "", "", part.keyAt()))));
            }
        }
        return entries;
    }

    private static List<Gap> gaps(String where, List<Gaps.Found> found) {
        return found.stream().map(one -> new Gap(where, one.path(), one.pattern(), one.ask(), one.at())).toList();
    }

    /** The sections in the order of the design; sources that have a part of the parts book are not looked into. */
    private static List<Entry> sections(MapTree tree, Binder binder, Problems problems) {
        MapTree plain = JobReader.withoutSources(tree);
        Vehicle vehicle = binder.group(Vehicle.class, plain, "", tree.at(), "bayproof", "kind", "pass-throughs");
        Map<String, List<Gap>> bySection = new LinkedHashMap<>();
        for (Gap gap : gaps(VEHICLE, Gaps.of(vehicle, plain, "", "", tree.at()))) {
            section(bySection, gap.key()).add(gap);
        }
        absent(bySection, tree, tree.get("pass-throughs"), "pass-throughs", "holes between zones");
        absent(bySection, tree, tree.get("supply") instanceof MapTree supply ? supply.get("sources") : null, "supply.sources", "battery of the vehicle and what charges it");
        Map<String, Vehicle.PassThrough> holes = new LinkedHashMap<>();
        if (tree.get("pass-throughs") instanceof MapTree map) {
            for (Tree.Entry hole : map.entries().values()) {
                String path = "pass-throughs." + hole.key();
                holes.put(hole.key(), binder.group(Vehicle.PassThrough.class, hole.value(), path, hole.keyAt()));
                section(bySection, path).addAll(gaps(VEHICLE, Gaps.of(holes.get(hole.key()), hole.value(), path, "pass-throughs.*", hole.keyAt())));
            }
        }
        Map<String, Item> items = sources(tree, binder, problems, bySection);
        Vehicle known = items == null ? withoutLinks(vehicle) : vehicle;
        new References(new Job(binder.group(Plan.class, null, "", tree.at()), known, true, items == null ? Map.of() : items,
                known.supply().links(), Collections.unmodifiableMap(holes), Map.of(), LimitsReader.defaults(), Map.of(), Map.of(), tree.at()), Set.of(), problems).check();
        List<Entry> entries = new ArrayList<>();
        Set<String> names = new TreeSet<>(Binder.keysOf(Vehicle.class));
        names.add("pass-throughs");
        for (String name : names) {
            Tree.Entry written = tree.entries().get(name);
            entries.add(new Entry(name, "section", written == null ? tree.at() : written.keyAt(), bySection.getOrDefault(name, List.of())));
        }
        return entries;
    }

    /** Two groups that are bound apart from the rest of the sheet and are missed all the same. */
    private static void absent(Map<String, List<Gap>> bySection, MapTree tree, Tree group, String path, String ask) {
        if (group == null) {
            section(bySection, path).add(new Gap(VEHICLE, path, path, ask, tree.at()));
        }
    }

    private static List<Gap> section(Map<String, List<Gap>> bySection, String path) {
        int dot = path.indexOf('.');
        return bySection.computeIfAbsent(dot < 0 ? path : path.substring(0, dot), any -> new ArrayList<>());
    }

    /** The sources that say their kind themselves; null where one is described in a parts book, so that its terminals are not known here. */
    private static Map<String, Item> sources(MapTree tree, Binder binder, Problems problems, Map<String, List<Gap>> bySection) {
        Map<String, Item> items = new LinkedHashMap<>();
        boolean all = true;
        if (tree.get("supply") instanceof MapTree supply && supply.get("sources") instanceof MapTree sources) {
            for (Tree.Entry source : sources.entries().values()) {
                if (source.value() instanceof MapTree map && map.get("part") instanceof ScalarTree) {
                    all = false;
                } else if (source.value() instanceof MapTree map) {
                    String path = "supply.sources." + source.key();
                    Item item = JobReader.bindItem(binder, problems, map, path, source.keyAt());
                    if (item != null) {
                        items.put(source.key(), item);
                        String kind = ((ScalarTree) map.get("kind")).text();
                        section(bySection, path).addAll(gaps(kind, Gaps.of((Record) item, map, path, "", source.keyAt())));
                    }
                } else {
                    problems.add(source.keyAt(), "\"" + source.key() + "\" must be a group of keys.",
                            "Write at least its part or its kind, such as { kind: battery }.");
                }
            }
        }
        return all ? items : null;
    }

    private static Vehicle withoutLinks(Vehicle of) {
        Vehicle.Supply supply = of.supply();
        return new Vehicle(of.title(), of.variant(), of.tag(), of.seenOn(), of.payloadLeftKilograms(), of.cabinSound(), new Vehicle.Supply(supply.path(), supply.at(), supply.ownLoadAmperes(), Map.of(), supply.standbyLimitAmperes(),
                supply.sleepSeconds(), supply.standbyBeforeAmperes(), supply.groundSide(), supply.startDipVolts(), supply.startStop(), supply.parkedChargeVolts(), supply.batterySensor(), supply.lowestCelsius()), of.radio(),
                of.connectors(), of.zones(), of.places(), of.routes(), of.keepOuts(), of.spaces(), of.networks(), of.outputs(), of.restraints());
    }
}
