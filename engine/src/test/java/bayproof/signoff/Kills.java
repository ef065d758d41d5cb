package bayproof.signoff;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Kills signing processes at random moments and looks at what they left. For many kills, after the build, in the folder
 * {@code engine}:
 *
 * <pre>
 * java -cp "target/test-classes:target/classes:target/lib/*" bayproof.signoff.Kills 1000
 * </pre>
 */
final class Kills {
    /** A record is begun anew after so many kills, so that it does not grow without end. */
    private static final int KILLS_A_RECORD = 5;
    private static final int MOST_MILLIS = 500;

    private final Random random;
    private final List<String> wrong = new ArrayList<>();
    private List<String> acknowledged = new ArrayList<>();
    private int total;
    private int unacknowledged;
    private int parts;

    Kills(long seed) {
        random = new Random(seed);
    }

    public static void main(String[] arguments) throws Exception {
        int kills = Integer.parseInt(arguments[0]);
        Path folder = Files.createTempDirectory("kills");
        Kills trial = new Kills(kills);
        trial.run(folder, kills);
        System.out.println(trial);
        trial.wrong.forEach(System.out::println);
        System.exit(trial.wrong.isEmpty() ? 0 : 1);
    }

    /** Everything in which a record was not as it must be. */
    List<String> wrong() {
        return wrong;
    }

    int total() {
        return total;
    }

    @Override
    public String toString() {
        return "entries acknowledged before a kill: " + total + "; lost or damaged: " + wrong.size() + "; kept without having been acknowledged: "
                + unacknowledged + "; killed while the new record lay beside the old one: " + parts;
    }

    void run(Path folder, int kills) throws IOException, InterruptedException {
        Path record = folder;
        for (int i = 0; i < kills; i++) {
            if (i % KILLS_A_RECORD == 0) {
                record = Files.createDirectory(folder.resolve("record-" + i));
                acknowledged = new ArrayList<>();
            }
            kill(record);
            look(record, i);
        }
    }

    private void kill(Path record) throws IOException, InterruptedException {
        Path said = record.resolveSibling("said");
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC",
                "-cp", System.getProperty("java.class.path"), SigningLoop.class.getName(), record.toString()).redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
        while (Files.size(said) == 0 && process.isAlive()) {
            Thread.sleep(1);
        }
        Thread.sleep(random.nextInt(MOST_MILLIS), random.nextInt(1_000_000));
        process.destroyForcibly().waitFor();
        String text = Files.readString(said);
        // What was said half is not acknowledged, and the first line only says that it began.
        List<String> entries = text.substring(0, text.lastIndexOf('\n') + 1).lines().skip(1).toList();
        acknowledged.addAll(entries);
        total += entries.size();
    }

    private void look(Path record, int kill) throws IOException {
        Chain chain = Chain.read(record);
        chain.faults().forEach(fault -> wrong.add("kill " + kill + ": " + fault));
        List<String> kept = chain.entries().stream().map(Entry::hash).toList();
        if (kept.size() < acknowledged.size() || !kept.subList(0, acknowledged.size()).equals(acknowledged)) {
            wrong.add("kill " + kill + ": " + acknowledged.size() + " acknowledged, " + kept.size() + " kept");
        } else if (kept.size() > acknowledged.size() + 1) {
            wrong.add("kill " + kill + ": more than one entry that nobody acknowledged");
        }
        unacknowledged += Math.max(0, kept.size() - acknowledged.size());
        parts += Files.exists(record.resolve("." + SignOffRecord.FILE + ".part")) ? 1 : 0;
        // The next process begins with what is there, said or not.
        acknowledged = new ArrayList<>(kept);
    }
}
