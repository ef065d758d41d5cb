package bayproof.command;

import bayproof.signoff.FileMode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes files that people keep: each is there whole or not at all. */
final class KeptFiles {
    private KeptFiles() {
    }

    /**
     * Writes files into a folder, which is made where it is not there.
     *
     * @param texts     text of each file by its name
     * @param replacing whether a file of that name gives way; otherwise nothing is written where one is there
     * @return the paths as they are to be printed
     * @throws WrongUse when they cannot be written; what was there before is whole
     */
    static List<Path> write(String folder, Map<String, String> texts, boolean replacing) throws WrongUse {
        List<Path> temporary = new ArrayList<>();
        try {
            Path into = Path.of(folder);
            Files.createDirectories(into);
            for (String name : texts.keySet()) {
                if (!replacing && Files.exists(into.resolve(name))) {
                    throw new WrongUse(into.resolve(name) + " is there already, and somebody may have filled it in. Nothing was written.",
                            "Name another folder, or move the file away.");
                }
            }
            for (Map.Entry<String, String> text : texts.entrySet()) {
                // Made as any file here is: a temporary file of the system would be its writer's alone.
                Path part = into.resolve("." + text.getKey() + "." + ProcessHandle.current().pid() + ".part");
                temporary.add(part);
                Files.write(part, text.getValue().getBytes(StandardCharsets.UTF_8));
                FileMode.keep(into.resolve(text.getKey()), part);
            }
            List<Path> written = new ArrayList<>();
            int next = 0;
            for (String name : texts.keySet()) {
                written.add(Files.move(temporary.get(next++), into.resolve(name), StandardCopyOption.ATOMIC_MOVE));
            }
            return written;
        } catch (FileAlreadyExistsException e) {
            throw new WrongUse("\"" + folder + "\" is no folder.", "Name a folder after --to; it is made where it is not there.");
        } catch (IOException | IllegalArgumentException e) {
            throw new WrongUse("Nothing can be written into \"" + folder + "\".", "Name a folder that may be written after --to.");
        } finally {
            for (Path part : temporary) {
                remove(part);
            }
        }
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // What is left is hidden and empty of meaning; what was asked for is written or refused.
            return;
        }
    }
}
