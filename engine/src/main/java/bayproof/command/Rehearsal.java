package bayproof.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Runs the commands once while the Java runtime notes the classes they load, so that later starts find them ready in an
 * archive. Writes beside the archive which Java and which place it was made for: an archive fits no other.
 */
public final class Rehearsal {
    private Rehearsal() {
    }

    /**
     * Runs the rehearsal.
     *
     * @param arguments a plan, and the file to write the Java's home and the program's place to
     * @throws IOException when that file cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        String plan = arguments[0];
        Main.run("review", plan, "--all", "--gate", "handover");
        Main.run("review", plan, "--as", "json");
        Main.run("why", "fuse-near-battery");
        Main.run("why", "fuse-near-battery", "--in", plan);
        Main.run("why", "no-such-rule");
        Main.run("--help");
        Files.writeString(Path.of(arguments[1]), System.getProperty("java.home") + "\n" + System.getProperty("java.class.path") + "\n",
                StandardCharsets.UTF_8);
    }
}
