package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Damaged files: whatever happens to a job's bytes, it is judged or refused with places a person can go to, and quickly.
 */
class ReaderRobustnessTest {
    private static final int DAMAGED = 150;
    /** Of the processor's time, so that a busy machine is no mistake of the reader; a sound job takes a hundredth of it. */
    private static final long MOST_NANOS = 2_000_000_000L;
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    @ParameterizedTest
    @CsvSource({"street-show", "tour-van"})
    void aDamagedJobIsReadOrRefusedWithPlaces(String job, @TempDir Path folder) throws IOException {
        Path plan = copy(job, folder);
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        Damage damage = new Damage(new Random(20261125));
        int readable = 0;
        for (int i = 0; i < DAMAGED; i++) {
            Path file = files.get(i % files.size());
            byte[] before = Files.readAllBytes(file);
            byte[] after = damage.of(before);
            Files.write(file, after);
            readable += isReadable(plan, file, after) ? 1 : 0;
            Files.write(file, before);
        }
        assertTrue(readable > 0 && readable < DAMAGED, readable + " of " + DAMAGED + " could be read: the damage is of one kind only");
        Tally.count("damaged files read or refused", DAMAGED);
    }

    /** Each wrong name is compared with all that are known, which ill will could make last. */
    @Test
    void manyWrongNamesAreRefusedQuickly(@TempDir Path folder) throws IOException {
        Path plan = copy("street-show", folder);
        StringBuilder readings = new StringBuilder("bayproof: 1\nkind: readings\nreadings:\n");
        for (int i = 0; i < 20_000; i++) {
            readings.append("  r-").append(i).append(": { of: runs.feed-").append(i).append(".lengthy, value: 1 m }\n");
        }
        Files.writeString(plan.resolveSibling("readings.yaml"), readings);
        assertFalse(isReadable(plan, plan, new byte[0]));
    }

    private static Path copy(String job, Path folder) throws IOException {
        Path target = Files.createDirectories(folder.resolve("cases").resolve(job));
        try (Stream<Path> all = Files.list(Jobs.CASES.resolve(job))) {
            for (Path file : all.toList()) {
                Files.copy(file, target.resolve(file.getFileName()));
            }
        }
        Path seeds = Files.createDirectories(folder.resolve("seeds"));
        Files.copy(Jobs.CASES.resolveSibling("seeds").resolve("parts.yaml"), seeds.resolve("parts.yaml"));
        return target.resolve("plan.yaml");
    }

    private static boolean isReadable(Path plan, Path file, byte[] bytes) throws IOException {
        long begin = CLOCK.getCurrentThreadCpuTime();
        try {
            Evaluation.of(JobFiles.read(plan, null));
            return true;
        } catch (UnusableInput e) {
            assertTrue(!e.problems().isEmpty() && e.problems().stream().allMatch(ReaderRobustnessTest::hasPlace), e.getMessage());
            return false;
        } catch (RuntimeException | StackOverflowError e) {
            return fail("a damaged job threw " + e + " for " + file.getFileName() + ", kept as " + kept(bytes), e);
        } finally {
            long nanos = CLOCK.getCurrentThreadCpuTime() - begin;
            assertTrue(nanos < MOST_NANOS, () -> "it took " + nanos / 1_000_000 + " ms");
        }
    }

    private static boolean hasPlace(Problem problem) {
        return !problem.at().file().isBlank() && problem.at().line() >= 1 && problem.at().column() >= 1 && !problem.what().isBlank();
    }

    private static Path kept(byte[] bytes) throws IOException {
        return Files.write(Files.createDirectories(Path.of("target", "damaged")).resolve("file-" + Arrays.hashCode(bytes)), bytes);
    }
}
