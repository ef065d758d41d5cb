package bayproof.read;

import bayproof.read.Tree.MapTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Reads the reference tables that come with the program. */
final class TableFiles {
    private TableFiles() {
    }

    /** The table of that file name. */
    static MapTree read(String name) throws UnusableInput {
        try (InputStream in = TableFiles.class.getResourceAsStream("/bayproof/shared/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the table " + name + " is not in this build");
            }
            return TreeReader.read(in.readAllBytes(), name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
