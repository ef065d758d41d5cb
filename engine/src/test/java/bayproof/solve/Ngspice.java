package bayproof.solve;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Runs decks with ngspice and reads what it prints. */
final class Ngspice {
    private static final Pattern PRINTED = Pattern.compile("(\\S+) = (\\S+)");
    private static final int PER_PROCESS = 300;
    private static final int PER_LINE = 8;

    private Ngspice() {
    }

    /** The name and version of the installed program, or nothing where there is none. */
    static Optional<String> version() throws IOException, InterruptedException {
        Process process;
        try {
            process = new ProcessBuilder("ngspice", "-v").redirectErrorStream(true).start();
        } catch (IOException notInstalled) {
            return Optional.empty();
        }
        String text = new String(process.getInputStream().readAllBytes());
        process.waitFor();
        Matcher name = Pattern.compile("ngspice-\\d+").matcher(text);
        return name.find() ? Optional.of(name.group()) : Optional.empty();
    }

    /** Solves the decks: {@code deck <title>}, then one line for each value; no lines where it found no point. */
    static String run(List<SpiceDeck> decks) throws IOException, InterruptedException {
        StringBuilder printed = new StringBuilder();
        for (int from = 0; from < decks.size(); from += PER_PROCESS) {
            Path folder = Files.createTempDirectory("decks");
            try {
                process(folder, decks.subList(from, Math.min(decks.size(), from + PER_PROCESS)), printed);
            } finally {
                try (Stream<Path> files = Files.list(folder)) {
                    for (Path file : files.toList()) {
                        Files.delete(file);
                    }
                }
                Files.delete(folder);
            }
        }
        return printed.toString();
    }

    private static void process(Path folder, List<SpiceDeck> decks, StringBuilder printed)
            throws IOException, InterruptedException {
        StringBuilder control = new StringBuilder("* all decks\n.control\nset numdgt=15\n");
        for (int i = 0; i < decks.size(); i++) {
            Files.writeString(folder.resolve("deck" + i + ".cir"), decks.get(i).circuit());
            control.append("echo deck ").append(decks.get(i).title()).append('\n');
            control.append("source deck").append(i).append(".cir\n").append(decks.get(i).circuit().contains("\n.ac ") ? "run\n" : "op\n");
            List<String> quantities = decks.get(i).quantities();
            for (int q = 0; q < quantities.size(); q += PER_LINE) {
                control.append("print ").append(String.join(" ",
                        quantities.subList(q, Math.min(quantities.size(), q + PER_LINE)))).append('\n');
            }
            control.append("destroy all\nremcirc\n");
        }
        control.append("quit\n.endc\n.end\n");
        Files.writeString(folder.resolve("all.cir"), control);
        File output = folder.resolve("output.txt").toFile();
        Process process = new ProcessBuilder("ngspice", "-n", "-b", "all.cir").directory(folder.toFile())
                .redirectOutput(output).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        process.waitFor();
        List<String> lines = Files.readAllLines(output.toPath()).stream()
                .filter(line -> line.startsWith("deck ") || PRINTED.matcher(line).matches()).toList();
        int at = 0;
        for (SpiceDeck deck : decks) {
            int end = at + 1;
            while (end < lines.size() && !lines.get(end).startsWith("deck ")) {
                end++;
            }
            printed.append(lines.get(at)).append('\n');
            // Where it finds no point it prints no node volts, but still what the resistors were left with.
            if (end - at - 1 == deck.quantities().size()) {
                lines.subList(at + 1, end).forEach(line -> printed.append(line).append('\n'));
            }
            at = end;
        }
    }

    /** The printed values by deck title and quantity. */
    static Map<String, Map<String, Double>> values(String printed) {
        Map<String, Map<String, Double>> values = new LinkedHashMap<>();
        Map<String, Double> current = null;
        for (String line : printed.lines().toList()) {
            Matcher value = PRINTED.matcher(line);
            if (value.matches()) {
                current.put(value.group(1), Double.parseDouble(value.group(2)));
            } else {
                current = new HashMap<>();
                values.put(line.substring("deck ".length()), current);
            }
        }
        return values;
    }
}
