package bayproof.start;

import bayproof.read.Seeds;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.util.LinkedHashMap;
import java.util.Map;

/** The example jobs that a new job is copied from. */
public final class Examples {
    private Examples() {
    }

    /** What each example is, by its name. */
    public static Map<String, String> all() {
        return texts("examples");
    }

    /** The texts of one of the lists that the program carries. */
    static Map<String, String> texts(String list) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (Entry entry : ((MapTree) Seeds.tree(list + ".yaml").get(list)).entries().values()) {
            texts.put(entry.key(), ((ScalarTree) entry.value()).text());
        }
        return texts;
    }

    /**
     * The files of an example as a folder of its own holds them, by name: the parts book has only the parts in use.
     *
     * @param example a name of {@link #all}
     */
    public static Map<String, String> files(String example) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("plan.yaml", Seeds.text(example + "/plan.yaml").replace("parts: [ ../parts.yaml ]", "parts: [ parts.yaml ]"));
        if (Seeds.has(example + "/vehicle.yaml")) {
            files.put("vehicle.yaml", Seeds.text(example + "/vehicle.yaml"));
            files.put("parts.yaml", PartsExcerpt.of(Seeds.tree(example + "/plan.yaml"), Seeds.tree(example + "/vehicle.yaml")));
        }
        return files;
    }
}
