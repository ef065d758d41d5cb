package bayproof.read;

import bayproof.read.Tree.Entry;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Files written for one test, and trees written out to compare them. */
final class Written {
    private Written() {
    }

    static MapTree yaml(String text) {
        return tree(text, "file.yaml");
    }

    static MapTree json(String text) {
        return tree(text, "file.json");
    }

    private static MapTree tree(String text, String name) {
        try {
            return TreeReader.read(text.getBytes(StandardCharsets.UTF_8), name);
        } catch (UnusableInput e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    static void file(Path folder, String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A job of which the folder holds the plan and all it names. */
    static Job job(Path folder) throws UnusableInput {
        return JobReader.bind(JobFiles.read(folder.resolve("plan.yaml"), null));
    }

    /** What is wrong with the job in a folder, each with its file, line and column. */
    static List<String> problems(Path folder) {
        try {
            job(folder);
            return List.of();
        } catch (UnusableInput e) {
            return e.problems().stream().map(problem -> problem.toString().replace(folder + "/", "")).toList();
        }
    }

    /** A tree as compact JSON. */
    static String text(Tree tree) {
        if (tree instanceof MapTree map) {
            return map.entries().values().stream().map(Written::text).collect(Collectors.joining(",", "{", "}"));
        }
        if (tree instanceof ListTree list) {
            return list.items().stream().map(Written::text).collect(Collectors.joining(",", "[", "]"));
        }
        ScalarTree scalar = (ScalarTree) tree;
        return scalar.isEmpty() ? "null" : "\"" + scalar.text() + "\"";
    }

    private static String text(Entry entry) {
        return "\"" + entry.key() + "\":" + text(entry.value());
    }
}
