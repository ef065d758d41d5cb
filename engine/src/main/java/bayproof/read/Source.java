package bayproof.read;

import java.nio.file.Files;
import java.nio.file.Path;

/** Where the files of a job come from. */
public interface Source {
    /** The disk. */
    Source DISK = new Source() {
        @Override
        public boolean has(Path file) {
            return Files.isRegularFile(file);
        }

        @Override
        public byte[] bytes(Path file, String name) throws UnusableInput {
            return TreeReader.bytes(file, name);
        }
    };

    /** Whether there is such a file. */
    boolean has(Path file);

    /**
     * What the file holds.
     *
     * @param name how messages call it
     * @throws UnusableInput when it cannot be read
     */
    byte[] bytes(Path file, String name) throws UnusableInput;
}
