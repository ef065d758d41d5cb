package bayproof.splice;

import bayproof.read.Address;
import bayproof.read.JobFiles;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.review.Looks;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tells in which file of a job an answer belongs, and makes the files that are not there yet. */
final class Owner {
    private static final String PARTS = "parts";
    private static final String READINGS = "readings";
    private static final String VEHICLE = "vehicle";
    private static final String HOLES = "pass-throughs";
    /** Groups whose entries are asked for before they are there. */
    private static final List<String> BEGUN_BY_ANSWERS = List.of("zones", "networks", "wishes", "calibrated-until", "settings", "inspections", "functions");

    private final JobText job;
    private final JobFiles files;
    private final FilledForm form;

    Owner(JobText job, JobFiles files, FilledForm form) {
        this.job = job;
        this.files = files;
        this.form = form;
    }

    /**
     * What has to be put where for an answer, the files it needs first.
     *
     * @throws NotSpliced when no file of the job owns it
     */
    List<Put> puts(Answer answer) throws NotSpliced {
        Address address = Address.of(files, answer.path());
        if (address == null) {
            throw NotSpliced.wrong("no file of this job holds such a value");
        }
        if (address.kind().equals("waivers")) {
            throw new NotSpliced("whoever decides writes it into the waivers");
        }
        refuseStrangers(address);
        Tree value = Values.of(answer.text(), address);
        String state = Looks.built().stateWhenMeasured(address);
        if (state != null && !answer.text().equals("cannot-be-seen")) {
            return reading(answer, value, state);
        }
        List<Put> puts = new ArrayList<>();
        if (value instanceof MapTree map && !map.entries().isEmpty()) {
            for (Entry entry : map.entries().values()) {
                List<String> keys = new ArrayList<>(address.keys());
                keys.add(entry.key());
                puts.addAll(put(address.kind(), keys, entry.value()));
            }
            return puts;
        }
        return put(address.kind(), address.keys(), value);
    }

    /** A slip in a path must not begin a new thing. */
    private void refuseStrangers(Address address) throws NotSpliced {
        int name = List.of(address.pattern().split("\\.")).indexOf("*");
        boolean begins = BEGUN_BY_ANSWERS.contains(address.keys().get(0)) || address.kind().equals(VEHICLE) && named(VEHICLE) == null;
        if (name < 0 || begins) {
            return;
        }
        List<String> entry = address.keys().subList(0, name + 1);
        boolean known = Address.at(files.tree(address.kind()), entry) != null
                || entry.get(0).equals(HOLES) && Address.at(files.tree("plan"), entry) != null;
        if (!known) {
            throw NotSpliced.wrong("\"" + String.join(".", entry) + "\" stands nowhere in this job");
        }
    }

    private List<Put> put(String kind, List<String> keys, Tree value) throws NotSpliced {
        if (keys.get(0).equals(HOLES)) {
            return hole(keys, value);
        }
        if (kind.equals(PARTS)) {
            return part(keys.get(1), keys.subList(2, keys.size()), value);
        }
        int depth = keys.get(0).equals("items") ? 2 : keys.size() > 2 && keys.get(1).equals("sources") ? 3 : 0;
        if (depth > 0 && keys.size() > depth && files.tree(kind) != null) {
            Tree item = Address.at(files.tree(kind), keys.subList(0, depth));
            boolean own = item instanceof MapTree map && map.get(keys.get(depth)) != null || Looks.built().isFitted(keys.get(depth));
            if (!own && item instanceof MapTree map && map.get("part") instanceof ScalarTree part) {
                return part(part.text(), keys.subList(depth, keys.size()), value);
            }
        }
        return kind.equals(VEHICLE) ? ofVehicle(keys, value) : List.of(ofPlan(keys, value));
    }

    private List<Put> hole(List<String> keys, Tree value) throws NotSpliced {
        boolean inPlan = keys.size() > 2 && Address.at(files.tree("plan"), keys) != null;
        boolean inSheet = keys.size() < 3 || Address.at(files.tree(VEHICLE), keys) != null || Looks.built().isOfVehicle(keys.get(2));
        return inSheet && !inPlan ? ofVehicle(keys, value) : List.of(ofPlan(keys, value));
    }

    // plan and its tables

    private Put ofPlan(List<String> keys, Tree value) throws NotSpliced {
        Tree group = planTree().get(keys.get(0));
        if (group instanceof ScalarTree name && JobFiles.isTable(name.text())) {
            return new Put(job.beside(name.text()), keys.subList(1, keys.size()), "plan", keys, value);
        }
        return new Put(job.plan(), keys, "plan", keys, value);
    }

    /** The plan as it stands in its file, with the names of its tables. */
    private MapTree planTree() throws NotSpliced {
        return tree(job.plan());
    }

    private MapTree tree(Path file) throws NotSpliced {
        try {
            return TreeReader.read(job.bytes(file, file.toString()), file.toString());
        } catch (UnusableInput e) {
            throw new NotSpliced("the file " + file.getFileName() + " cannot be read");
        }
    }

    // vehicle sheet

    private List<Put> ofVehicle(List<String> keys, Tree value) throws NotSpliced {
        List<Put> puts = new ArrayList<>();
        Path file = named(VEHICLE);
        if (file == null) {
            file = fresh(VEHICLE + ".yaml");
            puts.add(nameIt(VEHICLE, file));
            puts.addAll(head(file, VEHICLE, VEHICLE));
            for (Map.Entry<List<String>, Tree> stub : Stubs.of(files).entrySet()) {
                if (!stub.getKey().equals(keys)) {
                    puts.add(new Put(file, stub.getKey(), VEHICLE, stub.getKey(), stub.getValue()));
                }
            }
        }
        puts.add(new Put(file, keys, VEHICLE, keys, value));
        return puts;
    }

    /** The file the plan names for a kind; null where it names none. */
    private Path named(String key) throws NotSpliced {
        return planTree().get(key) instanceof ScalarTree name && !name.isEmpty() && !name.text().equals("unknown") ? job.beside(name.text()) : null;
    }

    private Put nameIt(String key, Path file) {
        return new Put(job.plan(), List.of(key), "plan", List.of(key), word(file.getFileName().toString()));
    }

    private static List<Put> head(Path file, String kind, String tree) {
        return List.of(new Put(file, List.of("bayproof"), tree, List.of("bayproof"), word("1")),
                new Put(file, List.of("kind"), tree, List.of("kind"), word(kind)));
    }

    /** A name beside the plan that no file has yet. */
    private Path fresh(String name) {
        Path file = job.beside(name);
        for (int i = 2; job.has(file); i++) {
            file = job.beside(name.replace(".", "-" + i + "."));
        }
        return file;
    }

    private static ScalarTree word(String text) {
        return new ScalarTree(text, false, Trees.NOWHERE);
    }

    // readings

    private List<Put> reading(Answer answer, Tree value, String state) throws NotSpliced {
        if (form.by().isEmpty() || form.when().isEmpty()) {
            throw new NotSpliced("it is a reading, and the head of the form does not say who took it and when");
        }
        List<Put> puts = new ArrayList<>();
        Path file = named(READINGS);
        if (file == null) {
            file = fresh(READINGS + ".yaml");
            puts.add(nameIt(READINGS, file));
            puts.addAll(head(file, READINGS, READINGS));
        }
        String base = answer.path().replaceFirst("^(items|supply\\.sources|supply|networks)\\.", "").replace('.', '-');
        MapTree readings = files.tree(READINGS).get(READINGS) instanceof MapTree map ? map : new MapTree(Map.of(), Trees.NOWHERE);
        String name = base;
        for (int i = 2; readings.get(name) != null; i++) {
            name = base + "-" + i;
        }
        Map<String, Entry> entry = new LinkedHashMap<>();
        Map<String, Tree> values = new LinkedHashMap<>();
        values.put("of", word(answer.path()));
        values.put("value", value);
        values.put("instrument", word(Looks.built().toolFor(Address.of(files, answer.path()))));
        values.put("state", word(state));
        values.put("who", word(form.by()));
        values.put("when", word(form.when()));
        values.forEach((key, one) -> entry.put(key, new Entry(key, Trees.NOWHERE, one)));
        List<String> keys = List.of(READINGS, name);
        puts.add(new Put(file, keys, READINGS, keys, new MapTree(entry, Trees.NOWHERE)));
        return puts;
    }

    // parts

    /** Data of a part go into a book of this job; a book that lies elsewhere serves other jobs as well and stays as it is. */
    private List<Put> part(String id, List<String> below, Tree value) throws NotSpliced {
        List<String> place = new ArrayList<>(List.of(PARTS, id));
        place.addAll(below);
        Tree listed = planTree().get(PARTS);
        List<Tree> books = listed instanceof ListTree list ? list.items() : List.of();
        Path own = null;
        for (Tree book : books) {
            if (!(book instanceof ScalarTree name) || !job.isInFolder(job.beside(name.text()))) {
                continue;
            }
            Path file = job.beside(name.text());
            Tree parts = JobFiles.isTable(name.text()) ? name : tree(file).get(PARTS);
            if (parts instanceof ScalarTree table && JobFiles.isTable(table.text())) {
                Path csv = job.beside(table.text());
                if (Address.at(files.tree(PARTS), List.of(PARTS, id)).at().file().equals(csv.toString())) {
                    return List.of(new Put(csv, place.subList(1, place.size()), PARTS, place, value));
                }
                continue;
            }
            if (parts instanceof MapTree map && map.get(id) != null) {
                return List.of(new Put(file, place, PARTS, place, value));
            }
            own = own == null ? file : own;
        }
        if (own != null) {
            return List.of(new Put(own, place, PARTS, place, value));
        }
        return inNewBook(books, place, value);
    }

    private List<Put> inNewBook(List<Tree> books, List<String> place, Tree value) {
        Path file = fresh(PARTS + ".yaml");
        String name = file.getFileName().toString();
        List<Tree> all = new ArrayList<>(List.of(word(name)));
        all.addAll(books);
        List<Put> puts = new ArrayList<>();
        puts.add(new Put(job.plan(), List.of(PARTS), "plan", List.of(PARTS), new ListTree(all, Trees.NOWHERE), name));
        puts.addAll(head(file, PARTS, PARTS));
        puts.add(new Put(file, place, PARTS, place, value));
        return puts;
    }
}
