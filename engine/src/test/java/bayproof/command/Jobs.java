package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Copies of the clean demo job with something changed in its plan. */
final class Jobs {
    static final Path CLEAN = Path.of("../cases/street-show/plan.yaml");
    static final Path TOUR = Path.of("../cases/tour-van/plan.yaml");

    private Jobs() {
    }

    /** A copy in which each text of {@code changes} stands in place of the text before it. */
    static String changed(Path folder, String... changes) throws IOException {
        return changed(CLEAN, folder, changes);
    }

    /** The same of another clean job. */
    static String changed(Path clean, Path folder, String... changes) throws IOException {
        Path job = Files.createDirectories(folder.resolve("cases").resolve(clean.getParent().getFileName()));
        try (Stream<Path> files = Files.list(clean.getParent())) {
            for (Path file : files.toList()) {
                Files.copy(file, job.resolve(file.getFileName()));
            }
        }
        Files.copy(Path.of("../seeds/parts.yaml"), Files.createDirectories(folder.resolve("seeds")).resolve("parts.yaml"));
        String plan = Files.readString(clean);
        for (int i = 0; i < changes.length; i += 2) {
            String before = plan;
            plan = plan.replace(changes[i], changes[i + 1]);
            assertNotEquals(before, plan, "the plan does not hold: " + changes[i]);
        }
        return Files.writeString(job.resolve("plan.yaml"), plan).toString();
    }
}
