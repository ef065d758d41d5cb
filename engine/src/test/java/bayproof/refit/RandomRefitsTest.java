package bayproof.refit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.Choices;
import bayproof.read.JobFiles;
import bayproof.read.JobReader;
import bayproof.read.Tree.MapTree;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A job moves into any vehicle a sheet can describe: nothing fails, and every thing of it stands in exactly one row. */
class RandomRefitsTest {
    private static final int VEHICLES = 500;
    private static final long SEED = 20261125;

    @Test
    void everyThingStandsInOneRowInAnyVehicle() throws Exception {
        Evaluation job = Evaluation.of(JobFiles.read(Jobs.CASES.resolve("street-show").resolve("plan.yaml"), null));
        Set<String> things = new TreeSet<>();
        job.job().items().values().stream().filter(item -> item.path().startsWith("items.")).forEach(item -> things.add(Rows.kind(item) + " " + item.id()));
        job.job().plan().runs().keySet().forEach(id -> things.add("run " + id));
        job.job().plan().settings().keySet().forEach(id -> things.add("setting " + id));
        job.job().plan().audioInputs().keySet().forEach(id -> things.add("channel " + id));
        RandomVehicles vehicles = new RandomVehicles(SEED);
        Set<Fate> fates = EnumSet.noneOf(Fate.class);
        for (int i = 0; i < VEHICLES; i++) {
            MapTree vehicle = vehicles.next();
            Refit refit = Refit.of(job, vehicle, Choices.none());
            List<String> keys = refit.rows().stream().map(Row::key).toList();
            assertEquals(new TreeSet<>(keys).size(), keys.size(), "vehicle " + i);
            assertTrue(keys.containsAll(things), "vehicle " + i);
            refit.rows().forEach(row -> fates.add(row.fate()));
            // A length is a measured way or the cable's own.
            refit.after().job().plan().runs().values().forEach(run -> assertTrue(!run.lengthMetres().isGiven()
                    || run.lengthMetres().orElse(0.0).equals(job.job().plan().runs().get(run.id()).lengthMetres().orElse(-1.0)), run.id()));
            JobReader.bind(refit.after().files().with("plan", refit.plan("vehicle.yaml", List.of("parts.yaml"), null)));
            refit.provisions();
            refit.hours();
            refit.lasting();
        }
        assertEquals(EnumSet.allOf(Fate.class), fates);
        Tally.count("refits into vehicles made at random", VEHICLES);
    }

    /** The engine knows nothing of the cases. */
    @Test
    void noNameOfTheCasesStandsInTheSources() throws Exception {
        List<String> names = List.of("tour-van", "parade-van", "harbor-bus", "van-long-flat-roof", "bus-small-glass-roof", "R-410", "house-battery", "conv-feed");
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "java"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
                String text = Files.readString(file);
                names.forEach(name -> assertTrue(!text.contains(name), file + " names " + name));
            }
        }
    }
}
