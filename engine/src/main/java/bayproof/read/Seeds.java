package bayproof.read;

import bayproof.read.Tree.MapTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The examples and the parts book that the program carries. */
public final class Seeds {
    private static final String FOLDER = "/bayproof/seeds/";

    private Seeds() {
    }

    /** Whether there is such a file. */
    public static boolean has(String name) {
        return Seeds.class.getResource(FOLDER + name) != null;
    }

    /** A file as it was written; its name may hold a folder. */
    public static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** The same, read. */
    public static MapTree tree(String name) {
        try {
            return TreeReader.read(bytes(name), name);
        } catch (UnusableInput e) {
            throw new IllegalStateException("a file that comes with the program cannot be read: " + e.getMessage(), e);
        }
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Seeds.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + name + " in this build");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
