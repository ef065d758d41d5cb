package bayproof.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;

/** Writes files so that they are there whole or not at all. Nothing that is there already is touched. */
public final class JobFolder {
    private JobFolder() {
    }

    /**
     * Writes a folder that is not there yet.
     *
     * @param folder where it is to stand; the folder around it is there
     * @param files  text by name of file; the name may begin with one folder
     * @throws FileAlreadyExistsException when something of that name is there
     * @throws IOException                when it cannot be written; then nothing is left behind
     */
    public static void write(Path folder, Map<String, String> files) throws IOException {
        refuseExisting(folder);
        Path draft = Files.createTempDirectory(around(folder), ".new-job");
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = draft.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
            }
            // A draft is its writer's alone; a job is as open as any folder made here.
            Path usual = Files.createDirectory(draft.resolve("usual"));
            if (Files.getFileStore(draft).supportsFileAttributeView("posix")) {
                Files.setPosixFilePermissions(draft, Files.getPosixFilePermissions(usual));
            }
            Files.delete(usual);
            refuseExisting(folder);
            move(draft, folder);
        } finally {
            discard(draft, files);
        }
    }

    /** Writes one file that is not there yet; the same holds as for a folder. */
    public static void write(Path file, String text) throws IOException {
        refuseExisting(file);
        Path draft = around(file).resolve("." + file.getFileName() + ".new");
        try {
            Files.write(draft, text.getBytes(StandardCharsets.UTF_8));
            refuseExisting(file);
            move(draft, file);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static void refuseExisting(Path path) throws IOException {
        if (Files.exists(path, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(path.toString());
        }
    }

    private static Path around(Path path) {
        return path.toAbsolutePath().normalize().getParent();
    }

    private static void move(Path draft, Path to) throws IOException {
        try {
            Files.move(draft, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, to);
        }
    }

    private static void discard(Path draft, Map<String, String> files) throws IOException {
        if (Files.exists(draft)) {
            for (String file : files.keySet()) {
                Files.deleteIfExists(draft.resolve(file));
            }
            for (String file : files.keySet()) {
                if (file.contains("/")) {
                    Files.deleteIfExists(draft.resolve(file).getParent());
                }
            }
            Files.deleteIfExists(draft.resolve("usual"));
            Files.deleteIfExists(draft);
        }
    }
}
