package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.vocabulary.At;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The clean demo job that the program carries: the job in which every kind of thing stands and nothing is left open. */
public final class DemoJob {
    private static final String FOLDER = "/bayproof/demo/";
    private static final List<String> NOT_IN_DEMO = List.of("limits", "waivers");

    private DemoJob() {
    }

    /** Its files. */
    public static JobFiles files() {
        Map<String, MapTree> trees = new LinkedHashMap<>();
        for (String kind : JobFiles.KINDS) {
            trees.put(kind, NOT_IN_DEMO.contains(kind) ? new MapTree(Map.<String, Entry>of(), new At(kind + ".yaml", 1, 1)) : file(kind + ".yaml"));
        }
        return JobFiles.of(trees);
    }

    private static MapTree file(String name) {
        try (InputStream in = DemoJob.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the demo job has no " + name + " in this build");
            }
            return TreeReader.read(in.readAllBytes(), name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UnusableInput e) {
            throw new IllegalStateException("the demo job cannot be read: " + e.getMessage(), e);
        }
    }
}
