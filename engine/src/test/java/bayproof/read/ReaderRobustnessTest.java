package bayproof.read;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import bayproof.support.Jobs;
import bayproof.support.Tally;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Damaged files: whatever happens to a job's bytes, it is read or refused with places a person can go to, and quickly.
 */
class ReaderRobustnessTest {
    private static final long NANOS_FOR_ALL = 4_000_000_000L;
    private static final int MOST_DAMAGED = 4000;
    private static final long MOST_NANOS_FOR_ONE = 2_000_000_000L;
    /** Texts that mean something to one reader or another. */
    private static final List<String> ODD = List.of("null", "~", "{", "}", "[", "]", ": ", "- ", "\"", "'", "|", ">", "&a ", "*a", "!!int ", "<<: ", "---\n",
            "\t", "\u0000", "\u00A0", "\uFEFF", "\u2028", "\uD83D\uDE00", "\r", "1e999 V", "NaN", "-1 m", "0 A", "999999999999 A", "unknown", "cannot-be-seen",
            "none", ".", "..", "a.b.c", ".csv", "../../..", "\"\\0\"", "\"\\uD800\"", ",", ";", "#", "%", "@", "`");

    private final Random random = new Random(20261125);

    @ParameterizedTest
    @CsvSource({"street-show", "tour-van"})
    void aDamagedJobIsReadOrRefusedWithPlaces(String job, @TempDir Path folder) throws IOException {
        Path plan = copy(job, folder);
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        int damaged = 0;
        int readable = 0;
        long end = System.nanoTime() + NANOS_FOR_ALL;
        while (System.nanoTime() < end && damaged < MOST_DAMAGED) {
            Path file = files.get(random.nextInt(files.size()));
            byte[] before = Files.readAllBytes(file);
            byte[] after = damaged(before);
            Files.write(file, after);
            readable += isReadable(plan, file, after) ? 1 : 0;
            Files.write(file, before);
            damaged++;
        }
        assertTrue(readable > 0 && readable < damaged, readable + " of " + damaged + " could be read: the damage is of one kind only");
        Tally.count("damaged files read or refused", damaged);
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
        long begin = System.nanoTime();
        try {
            JobReader.bind(JobFiles.read(plan, null));
            return true;
        } catch (UnusableInput e) {
            assertTrue(!e.problems().isEmpty() && e.problems().stream().allMatch(ReaderRobustnessTest::hasPlace), e.getMessage());
            return false;
        } catch (RuntimeException | StackOverflowError e) {
            return fail("reading threw " + e + " for " + file.getFileName() + ", kept as " + kept(bytes), e);
        } finally {
            long nanos = System.nanoTime() - begin;
            assertTrue(nanos < MOST_NANOS_FOR_ONE, () -> "it took " + nanos / 1_000_000 + " ms");
        }
    }

    private static boolean hasPlace(Problem problem) {
        return !problem.at().file().isBlank() && problem.at().line() >= 1 && problem.at().column() >= 1 && !problem.what().isBlank();
    }

    private static Path kept(byte[] bytes) throws IOException {
        return Files.write(Files.createDirectories(Path.of("target", "damaged")).resolve("file-" + Arrays.hashCode(bytes)), bytes);
    }

    // damage

    private byte[] damaged(byte[] bytes) {
        byte[] result = bytes;
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            result = damagedOnce(result);
        }
        return result;
    }

    private byte[] damagedOnce(byte[] bytes) {
        if (bytes.length < 2) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        return switch (random.nextInt(8)) {
            case 0 -> {
                byte[] flipped = bytes.clone();
                flipped[at] ^= (byte) (1 << random.nextInt(8));
                yield flipped;
            }
            case 1 -> joined(bytes, at, "", Math.min(bytes.length, at + 1 + random.nextInt(20)));
            case 2 -> joined(bytes, at, ODD.get(random.nextInt(ODD.size())), at);
            case 3 -> lines(bytes, true);
            case 4 -> lines(bytes, false);
            case 5, 6 -> swapped(bytes);
            default -> Arrays.copyOf(bytes, at);
        };
    }

    private static byte[] joined(byte[] bytes, int to, String middle, int from) {
        byte[] inserted = middle.getBytes(StandardCharsets.UTF_8);
        byte[] result = new byte[to + inserted.length + bytes.length - from];
        System.arraycopy(bytes, 0, result, 0, to);
        System.arraycopy(inserted, 0, result, to, inserted.length);
        System.arraycopy(bytes, from, result, to + inserted.length, bytes.length - from);
        return result;
    }

    /** One line written twice, or taken out. */
    private byte[] lines(byte[] bytes, boolean twice) {
        List<String> lines = new ArrayList<>(List.of(text(bytes).split("\n", -1)));
        int at = random.nextInt(lines.size());
        if (twice) {
            lines.add(random.nextInt(lines.size()), lines.get(at));
        } else {
            lines.remove(at);
        }
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Two words of the file change places, or one of them gives way to an odd one. */
    private byte[] swapped(byte[] bytes) {
        String[] words = text(bytes).split("(?<=[^a-z0-9.-])|(?=[^a-z0-9.-])");
        int one = random.nextInt(words.length);
        int other = random.nextInt(words.length);
        String word = words[one];
        words[one] = random.nextInt(3) == 0 ? new String(ODD.get(random.nextInt(ODD.size())).getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1)
                : words[other];
        words[other] = word;
        return String.join("", words).getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Bytes as characters and back without loss. */
    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
