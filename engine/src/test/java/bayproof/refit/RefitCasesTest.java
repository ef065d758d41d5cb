package bayproof.refit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Choices;
import bayproof.read.JobFiles;
import bayproof.read.MergePatch;
import bayproof.read.Sheet;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The tour van's system in two other vehicles: each planted difference changes the rows listed for it and no other. */
class RefitCasesTest {
    private static final Path NEAR = Jobs.CASES.resolve("parade-van");
    private static final Path FAR = Jobs.CASES.resolve("harbor-bus");

    private static Evaluation tour;
    private static MapTree sheet;
    private static Refit near;

    @BeforeAll
    static void move() throws Exception {
        tour = Evaluation.of(JobFiles.read(Jobs.CASES.resolve("tour-van").resolve("plan.yaml"), null));
        sheet = Sheet.read(NEAR.resolve("vehicle.yaml"), "vehicle").tree();
        near = refit(sheet);
    }

    private static Refit refit(MapTree vehicle) throws Exception {
        return Refit.of(tour, vehicle, Choices.read(NEAR.resolve("choices.yaml"), tour.job(), Refit.bare(tour.files(), vehicle)));
    }

    @Test
    void nearlyEverythingCarriesOverIntoTheNearVehicle() {
        assertEquals(List.of("mount house-battery", "run conv-feed-2"), near.of(Fate.NOT).stream().map(Row::key).toList());
        // Nobody has looked at the work in the new vehicle yet, nor measured what it draws asleep.
        assertEquals(List.of("job inspections", "job readings"), near.of(Fate.OPEN).stream().map(Row::key).toList());
        assertTrue(near.count(Fate.CARRIES) > 0.9 * near.rows().size());
    }

    @Test
    void everyThingOfTheOldJobStandsInOneRow() {
        List<String> keys = near.rows().stream().map(Row::key).toList();
        assertEquals(new TreeSet<>(keys).size(), keys.size());
        tour.job().items().values().stream().filter(item -> item.path().startsWith("items."))
                .forEach(item -> assertTrue(keys.contains(Rows.kind(item) + " " + item.id()), item.id()));
        tour.job().plan().runs().keySet().forEach(id -> assertTrue(keys.contains("run " + id), id));
        tour.job().plan().settings().keySet().forEach(id -> assertTrue(keys.contains("setting " + id), id));
    }

    @Test
    void eachDifferenceAloneChangesItsRowsAndTogetherTheyGiveTheUnion() throws Exception {
        MapTree all = sheet;
        Set<String> union = new TreeSet<>();
        Map<String, Set<String>> wanted = new LinkedHashMap<>();
        Map<String, Set<String>> found = new LinkedHashMap<>();
        Map<String, String> reasons = new LinkedHashMap<>();
        for (Entry difference : ((MapTree) TreeReader.read(FAR.resolve("differences.yaml"), "differences.yaml").get("differences")).entries().values()) {
            MapTree entry = (MapTree) difference.value();
            MapTree patch = (MapTree) entry.get("patch");
            wanted.put(difference.key(), words(entry.get("rows")));
            Refit alone = refit(MergePatch.apply(sheet, patch));
            found.put(difference.key(), changed(alone));
            reasons.put(difference.key(), ((ScalarTree) entry.get("reason")).text());
            assertTrue(gives(alone, reasons.get(difference.key()), wanted.get(difference.key())), difference.key() + " alone does not say " + reasons.get(difference.key()));
            union.addAll(wanted.get(difference.key()));
            all = MergePatch.apply(all, patch);
        }
        assertEquals(lines(wanted), lines(found));
        assertTrue(wanted.size() >= 10);
        Refit together = refit(all);
        assertEquals(union, changed(together), "together");
        reasons.forEach((name, reason) -> assertTrue(gives(together, reason, wanted.get(name)), "together nothing says " + reason + " for " + name));
        MapTree far = Sheet.read(FAR.resolve("vehicle.yaml"), "vehicle").tree();
        for (String key : List.of("title", "variant", "tag")) {
            all = all.without(key);
            far = far.without(key);
        }
        assertEquals(said(all), said(far), "the sheet of the far vehicle is the near one with every difference");
        Tally.count("planted differences of a refit, each alone and all together", wanted.size());
    }

    /** Whether one of these rows gives the reason. */
    private static boolean gives(Refit refit, String reason, Set<String> rows) {
        return refit.rows().stream().filter(row -> rows.contains(row.key())).flatMap(row -> row.reasons().stream()).anyMatch(one -> one.fact().equals(reason));
    }

    private static String lines(Map<String, Set<String>> byDifference) {
        StringBuilder lines = new StringBuilder();
        byDifference.forEach((name, rows) -> lines.append(name).append(": ").append(rows).append("\n"));
        return lines.toString();
    }

    private static Set<String> words(Tree tree) {
        Set<String> words = new TreeSet<>();
        ((ListTree) tree).items().forEach(word -> words.add(((ScalarTree) word).text()));
        return words;
    }

    /** Rows that say something else than in the near vehicle. */
    private static Set<String> changed(Refit refit) {
        Map<String, String> before = said(near);
        Map<String, String> after = said(refit);
        Set<String> changed = new TreeSet<>(before.keySet());
        changed.addAll(after.keySet());
        changed.removeIf(key -> before.getOrDefault(key, "").equals(after.getOrDefault(key, "")));
        return changed;
    }

    private static Map<String, String> said(Refit refit) {
        Map<String, String> said = new TreeMap<>();
        refit.rows().forEach(row -> said.put(row.key(), row.fate() + " " + row.decisive().stream().map(reason -> reason.fact() + " " + reason.say()).toList()));
        return said;
    }

    /** A tree by what it says, whatever the order of its keys. */
    private static String said(Tree tree) {
        if (tree instanceof MapTree map) {
            Map<String, String> entries = new TreeMap<>();
            map.entries().values().forEach(entry -> entries.put(entry.key(), said(entry.value())));
            return entries.toString();
        }
        if (tree instanceof ListTree list) {
            List<String> items = new ArrayList<>();
            list.items().forEach(item -> items.add(said(item)));
            return items.toString();
        }
        return ((ScalarTree) tree).text();
    }
}
