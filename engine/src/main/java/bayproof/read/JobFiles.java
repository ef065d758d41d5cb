package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.vocabulary.At;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The files of a job as trees, each checked to be of its kind. A file that the plan does not name is an empty tree.
 * Cases, sweeps and remedies change trees and bind them again.
 */
public final class JobFiles {
    /** Files of a job, by the word a case uses for them. */
    public static final List<String> KINDS = List.of("plan", "vehicle", "parts", "readings", "limits", "waivers");

    private static final String READINGS = "readings";

    private final Map<String, MapTree> trees;

    private JobFiles(Map<String, MapTree> trees) {
        this.trees = trees;
    }

    /**
     * Reads a plan and every file it names.
     *
     * @param plan   the plan's file
     * @param limits the shop's limits, in place of those the plan names; null when not asked for
     * @throws UnusableInput when a file cannot be read; all such files are named together
     */
    public static JobFiles read(Path plan, Path limits) throws UnusableInput {
        return read(plan, limits, Source.DISK);
    }

    /** The same from files that may lie elsewhere than on the disk; see {@link #read(Path, Path)}. */
    public static JobFiles read(Path plan, Path limits, Source source) throws UnusableInput {
        return new Reader(source).read(plan, limits);
    }

    /** Files that were read elsewhere, one tree for each kind. */
    static JobFiles of(Map<String, MapTree> trees) {
        return new JobFiles(trees);
    }

    /** Reads the files of one job. */
    private static final class Reader {
        private final Source source;
        private final Problems problems;

        Reader(Source source) {
            this(source, new Problems());
        }

        private Reader(Source source, Problems problems) {
            this.source = source;
            this.problems = problems;
        }

        JobFiles read(Path plan, Path limits) throws UnusableInput {
            MapTree planTree = TreeReader.read(source.bytes(plan, plan.toString()), plan.toString());
            checkHead(planTree, "plan", problems);
            planTree = withTable(plan, planTree, "items", Item.KINDS.values());
            planTree = withTable(plan, planTree, "runs", List.of(Run.class));
            planTree = withTable(plan, planTree, "pins", List.of(Plan.PinUse.class));
            planTree = withTable(plan, planTree, "inspections", List.of(Inspection.class));
            Map<String, MapTree> trees = new LinkedHashMap<>();
            trees.put("plan", planTree);
            trees.put("vehicle", named(plan, planTree, "vehicle"));
            trees.put("parts", partsBooks(plan, planTree));
            trees.put("readings", named(plan, planTree, "readings"));
            trees.put("waivers", named(plan, planTree, "waivers"));
            trees.put("limits", limits == null ? named(plan, planTree, "limits") : read(limits, limits.toString(), "limits"));
            problems.throwIfAny();
            return new JobFiles(trees);
        }

        private MapTree named(Path plan, MapTree planTree, String key) {
            Tree value = planTree.get(key);
            if (!(value instanceof ScalarTree scalar) || scalar.isEmpty() || scalar.text().equals("unknown")) {
                return empty(planTree.at());
            }
            return readBeside(plan, scalar, key);
        }

        private MapTree readBeside(Path plan, ScalarTree name, String kind) {
            Path beside = beside(plan, name);
            return beside == null ? empty(name.at())
                    : kind.equals(READINGS) && isTable(beside.toString()) ? readingsTable(beside) : read(beside, beside.toString(), kind);
        }

        /** Readings as a table alone, as the file would say them. */
        private MapTree readingsTable(Path path) {
            String name = path.toString();
            try {
                MapTree rows = CsvReader.read(source.bytes(path, name), name, List.of(Readings.Reading.class));
                return empty(rows.at()).with(READINGS, rows);
            } catch (UnusableInput e) {
                problems.addAll(e);
                return empty(new At(name, 1, 1));
            }
        }

        /** The file that another one names, or null when it is not there. */
        private Path beside(Path file, ScalarTree name) {
            try {
                Path beside = file.resolveSibling(name.text()).normalize();
                if (source.has(beside)) {
                    return beside;
                }
            } catch (InvalidPathException e) {
                // Such a file cannot be there either.
            }
            problems.add(name.at(), "the file \"" + Problems.shortened(name.text()) + "\" is not there.",
                    "Files are looked for beside the one that names them; correct the name or take the line out.");
            return null;
        }

        /** A file with the table that stands apart in place of its name, so that nothing further on knows of tables. */
        private MapTree withTable(Path path, MapTree file, String key, Collection<? extends Class<?>> rows) {
            if (!(file.get(key) instanceof ScalarTree name) || !isTable(name.text())) {
                return file;
            }
            Path beside = beside(path, name);
            try {
                return file.with(key, beside == null ? empty(name.at()) : CsvReader.read(source.bytes(beside, beside.toString()), beside.toString(), rows));
            } catch (UnusableInput e) {
                problems.addAll(e);
                return file.with(key, empty(name.at()));
            }
        }

        private MapTree read(Path path, String name, String kind) {
            try {
                MapTree tree = TreeReader.read(source.bytes(path, name), name);
                checkHead(tree, kind, problems);
                return tree;
            } catch (UnusableInput e) {
                problems.addAll(e);
                return empty(new At(name, 1, 1));
            }
        }

        private MapTree partsBooks(Path plan, MapTree planTree) {
            Map<String, Entry> whole = new LinkedHashMap<>();
            Map<String, Entry> additions = new LinkedHashMap<>();
            Map<String, Entry> heads = new TreeMap<>();
            if (planTree.get("parts") instanceof ListTree list) {
                for (Tree item : list.items()) {
                    if (item instanceof ScalarTree name && !name.isEmpty()) {
                        MapTree book = book(plan, name);
                        heads.putAll(book.entries());
                        if (book.get("parts") instanceof MapTree map) {
                            map.entries().values().forEach(part -> once(part, isAddition(part) ? additions : whole));
                        }
                    }
                }
            }
            additions.forEach((id, more) -> whole.merge(id, more, (part, own) -> part.value() instanceof MapTree map
                    ? new Entry(id, part.keyAt(), MergePatch.apply(map, (MapTree) own.value())) : part));
            heads.put("parts", new Entry("parts", planTree.at(), new MapTree(whole, planTree.at())));
            return new MapTree(heads, planTree.at());
        }

        private void once(Entry part, Map<String, Entry> parts) {
            Entry before = parts.putIfAbsent(part.key(), part);
            if (before != null) {
                problems.add(part.keyAt(), "part \"" + part.key() + "\" stands in two parts books (also at " + before.keyAt() + ").",
                        "Keep one of them.");
            }
        }

        /** A parts book: a file of its own, one that names a table, or the table alone. */
        private MapTree whole(Path path) {
            String name = path.toString();
            if (!isTable(name)) {
                return withTable(path, read(path, name, "parts"), "parts", Item.KINDS.values());
            }
            try {
                MapTree parts = CsvReader.read(source.bytes(path, name), name, Item.KINDS.values());
                return new MapTree(Map.of("parts", new Entry("parts", parts.at(), parts)), parts.at());
            } catch (UnusableInput e) {
                problems.addAll(e);
                return empty(new At(name, 1, 1));
            }
        }

        private MapTree book(Path plan, ScalarTree name) {
            Path beside = beside(plan, name);
            if (beside == null) {
                return empty(name.at());
            }
            MapTree book = whole(beside);
            Tree parts = book.get("parts");
            if (parts != null && !(parts instanceof MapTree) && !(parts instanceof ScalarTree scalar && scalar.isEmpty())) {
                problems.add(parts.at(), "\"parts\" must be a group of names, not " + parts.noun() + ".", "");
            }
            return book;
        }
    }

    /** A part that does not say its kind adds to the part of its name in another book, and what it says goes before. */
    static boolean isAddition(Entry part) {
        return part.value() instanceof MapTree map && map.get("kind") == null;
    }

    /** A parts book of any form. */
    static MapTree wholeBook(Path path, Problems problems) {
        return new Reader(Source.DISK, problems).whole(path);
    }

    /** Whether a file of that name is a table. */
    public static boolean isTable(String name) {
        return name.toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    static void checkHead(MapTree tree, String kind, Problems problems) {
        if (!(tree.get("bayproof") instanceof ScalarTree version) || !version.text().equals("1")) {
            Tree given = tree.get("bayproof");
            problems.add(given == null ? tree.at() : given.at(), given == null ? "\"bayproof: 1\" is missing."
                    : "this file's version is not 1.", "Begin the file with \"bayproof: 1\".");
        }
        Tree given = tree.get("kind");
        String found = given instanceof ScalarTree scalar ? scalar.text() : "plan";
        if (!found.equals(kind)) {
            problems.add(given == null ? tree.at() : given.at(), "this file says it is of kind \"" + found + "\", but it is used as "
                    + kind + ".", kind.equals("plan") ? "Name a plan." : "Write \"kind: " + kind + "\" if that is what it is.");
        }
    }

    private static MapTree empty(At at) {
        return new MapTree(Map.of(), at);
    }

    /** The tree of one kind of file. */
    public MapTree tree(String kind) {
        return trees.get(kind);
    }

    /** These files with one tree replaced. */
    public JobFiles with(String kind, MapTree tree) {
        Map<String, MapTree> changed = new LinkedHashMap<>(trees);
        changed.put(kind, tree);
        return new JobFiles(changed);
    }

    /**
     * These files with those readings only that are kept.
     *
     * @param keep asked with the path of what was measured, an empty text where a reading does not say it
     */
    public JobFiles withReadings(Predicate<String> keep) {
        MapTree file = tree(READINGS);
        if (!(file.get(READINGS) instanceof MapTree readings)) {
            return this;
        }
        MapTree kept = readings;
        for (Entry reading : readings.entries().values()) {
            if (!keep.test(reading.value() instanceof MapTree map && map.get("of") instanceof ScalarTree of ? of.text() : "")) {
                kept = kept.without(reading.key());
            }
        }
        return with(READINGS, file.with(READINGS, kept));
    }

    /** These files with merge patches put over them, by kind of file. */
    public JobFiles patched(MapTree patches) {
        JobFiles result = this;
        for (Entry patch : patches.entries().values()) {
            if (!KINDS.contains(patch.key()) || !(patch.value() instanceof MapTree map)) {
                throw new IllegalArgumentException("a change names one of " + KINDS + ", not \"" + patch.key() + "\"");
            }
            result = result.with(patch.key(), MergePatch.apply(result.tree(patch.key()), map));
        }
        return result;
    }
}
