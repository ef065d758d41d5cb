package bayproof.signoff;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Who may read and write a file that takes another one's place: whoever could before. */
public final class FileMode {
    private FileMode() {
    }

    /**
     * Gives a new file the permissions of the one it will replace; where none is there, or the system knows none, it keeps those it was made with.
     *
     * @param old   the file that will be replaced
     * @param fresh the one that takes its place
     */
    public static void keep(Path old, Path fresh) throws IOException {
        if (Files.exists(old) && Files.getFileStore(old).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(fresh, Files.getPosixFilePermissions(old));
        }
    }
}
