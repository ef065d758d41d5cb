package bayproof.meta;

import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The files of the rules in the sources. A name is its topic, a slash and the rule's id. */
final class RuleFiles {
    static final Path RULES = Path.of("..", "rules", "src", "main", "resources", "bayproof", "rules");
    static final Path CASES = Path.of("..", "cases");
    private static final Pattern STRING = Pattern.compile("\"([^\"\\\\\\n]*+(?:\\\\.[^\"\\\\\\n]*+)*+)\"");

    private RuleFiles() {
    }

    /** Names of all files with an ending, two folders deep at most; folders that hold a whole job are left out. */
    static TreeSet<String> names(Path root, String ending) {
        TreeSet<String> names = new TreeSet<>();
        try (Stream<Path> files = Files.walk(root)) {
            files.filter(file -> file.toString().endsWith(ending) && !isInJob(root, file)).forEach(file -> {
                String name = root.relativize(file).toString().replace('\\', '/');
                names.add(name.substring(0, name.length() - ending.length()));
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return names;
    }

    private static boolean isInJob(Path root, Path file) {
        for (Path folder = file.getParent(); folder.startsWith(root); folder = folder.getParent()) {
            if (Files.exists(folder.resolve("plan.yaml")) || Files.exists(folder.resolve("vehicle.yaml"))) {
                return true;
            }
        }
        return false;
    }

    static TreeSet<String> rules() {
        return names(RULES, ".drl");
    }

    static String id(String name) {
        return name.substring(name.indexOf('/') + 1);
    }

    static String topic(String name) {
        return name.substring(0, name.indexOf('/'));
    }

    static String drl(String name) {
        return text(RULES.resolve(name + ".drl"));
    }

    static String card(String name) {
        return text(RULES.resolve(name + ".md"));
    }

    static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The keys at the head of a card, between its first two lines of hyphens. */
    static MapTree head(String name) {
        String card = card(name);
        int end = card.indexOf("\n---\n", 4);
        if (!card.startsWith("---\n") || end < 0) {
            throw new AssertionError(name + ".md has no head between lines of hyphens");
        }
        try {
            return TreeReader.read(card.substring(4, end + 1).getBytes(StandardCharsets.UTF_8), name + ".md");
        } catch (UnusableInput e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    static List<String> words(MapTree head, String key) {
        return head.get(key) instanceof ListTree list ? list.items().stream().map(item -> ((ScalarTree) item).text()).toList() : List.of();
    }

    /** What stands in quotes in a source text. */
    static TreeSet<String> quoted(String text) {
        TreeSet<String> found = new TreeSet<>();
        Matcher strings = STRING.matcher(text);
        while (strings.find()) {
            found.add(strings.group(1));
        }
        return found;
    }

    /** A source text without comments and without what stands in quotes. */
    static String bare(String text) {
        return STRING.matcher(text).replaceAll("\"\"").replaceAll("(?s)/\\*.*?\\*/", " ").replaceAll("//[^\n]*", " ");
    }
}
