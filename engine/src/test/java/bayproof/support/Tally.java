package bayproof.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Counts what the tests really exercised (rules, cases, sweep mutations, outside checks) and names the checks
 * that could not run, so that the last lines of the test command can say so.
 */
public final class Tally {
    private static final Path FOLDER = Path.of(System.getProperty("tally.folder", "target/tally/alone"));

    private Tally() {
    }

    /** Adds to a count; {@code kind} is the plural noun that the summary prints, such as "outside checks". */
    public static void count(String kind, long number) {
        append("count\t" + kind + "\t" + number);
    }

    /** Names a check that this machine cannot run, and why. */
    public static void notRun(String check, String why) {
        append("not-run\t" + check + "\t" + why);
    }

    /** One more line that the summary prints as it is, such as the length of a list. */
    public static void say(String line) {
        append("say\t" + line);
    }

    private static synchronized void append(String line) {
        try {
            Files.createDirectories(FOLDER);
            Files.writeString(FOLDER.resolve("tally-" + ProcessHandle.current().pid() + ".txt"), line + "\n",
                    StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Prints the summary; its last line is the number of checks that could not run. */
    public static void main(String[] arguments) throws IOException {
        Map<String, Long> counts = new TreeMap<>();
        Map<String, String> notRun = new TreeMap<>();
        Map<String, Boolean> said = new TreeMap<>();
        try (Stream<Path> files = Files.exists(FOLDER) ? Files.list(FOLDER) : Stream.empty()) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                for (String line : Files.readAllLines(file)) {
                    List<String> parts = List.of(line.split("\t"));
                    switch (parts.get(0)) {
                        case "count" -> counts.merge(parts.get(1), Long.parseLong(parts.get(2)), Long::sum);
                        case "not-run" -> notRun.put(parts.get(1), parts.get(2));
                        default -> said.put(parts.get(1), true);
                    }
                }
            }
        }
        System.out.println();
        System.out.println("What the tests exercised");
        counts.forEach((kind, number) -> System.out.printf("  %7d  %s%n", number, kind));
        said.keySet().forEach(line -> System.out.println("           " + line));
        notRun.forEach((check, why) -> System.out.println("  NOT RUN  " + check + ": " + why));
        System.out.println("NOT RUN: " + notRun.size());
    }
}
