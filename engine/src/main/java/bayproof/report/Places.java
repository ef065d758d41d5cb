package bayproof.report;

import bayproof.vocabulary.At;
import java.nio.file.Path;

/** Names of files as reports print them; the folders of the machine they were made on never show. */
final class Places {
    private final Path folder;
    private final boolean given;

    /** @param plan the plan's file as the user gave it */
    Places(String plan) {
        Path path = Path.of(plan);
        this.given = !path.isAbsolute();
        this.folder = path.getParent();
    }

    /** A file as seen from the plan's folder. */
    String file(At at) {
        Path path = Path.of(at.file());
        if (folder == null) {
            return slashes(path);
        }
        return path.isAbsolute() == folder.isAbsolute() ? slashes(folder.normalize().relativize(path.normalize()))
                : slashes(path.getFileName());
    }

    /** A file as the user gave it; as seen from the plan's folder where that was given from the root. */
    String fileAsGiven(At at) {
        return given && !Path.of(at.file()).isAbsolute() ? slashes(Path.of(at.file())) : file(at);
    }

    /** File and line, as seen from the plan's folder. */
    String line(At at) {
        return Plain.text(file(at)) + ":" + at.line();
    }

    /** A file as the user gave it, for a heading. */
    static String slashed(String file) {
        return Plain.text(file.replace('\\', '/'));
    }

    private static String slashes(Path path) {
        return path.toString().replace('\\', '/');
    }
}
