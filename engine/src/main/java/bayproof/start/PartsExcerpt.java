package bayproof.start;

import bayproof.read.Seeds;
import bayproof.read.Tree;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.ScalarTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A parts book with only those parts of the book that comes along which some files name. */
final class PartsExcerpt {
    private static final String BOOK = "parts.yaml";

    private PartsExcerpt() {
    }

    /** The text of the book; each part stands as it was written. */
    static String of(MapTree... files) {
        Set<String> wanted = new TreeSet<>();
        for (MapTree file : files) {
            named(file, wanted);
        }
        MapTree book = Seeds.tree(BOOK);
        List<Entry> parts = new ArrayList<>(((MapTree) book.get("parts")).entries().values());
        addLeads(parts, wanted);
        List<String> lines = Seeds.text(BOOK).lines().toList();
        StringBuilder text = new StringBuilder();
        lines.subList(0, parts.get(0).keyAt().line() - 1).stream().takeWhile(line -> !line.startsWith("parts:"))
                .forEach(line -> text.append(line).append('\n'));
        text.append("parts:\n");
        for (int i = 0; i < parts.size(); i++) {
            if (wanted.contains(parts.get(i).key())) {
                int end = i + 1 == parts.size() ? lines.size() : parts.get(i + 1).keyAt().line() - 1;
                List<String> own = lines.subList(parts.get(i).keyAt().line() - 1, end);
                int last = own.size();
                while (own.get(last - 1).isBlank() || own.get(last - 1).strip().startsWith("#")) {
                    last--;
                }
                own.subList(0, last).forEach(line -> text.append(line).append('\n'));
            }
        }
        return text.toString();
    }

    /** An adapter lead is named by nobody: where a pin is joined by one it is looked for in the book by its connectors. */
    private static void addLeads(List<Entry> parts, Set<String> wanted) {
        for (Entry part : parts) {
            MapTree group = (MapTree) part.value();
            if (group.get("kind") instanceof ScalarTree kind && kind.text().equals("harness")
                    && group.get("connectors") instanceof ListTree families
                    && families.items().stream().allMatch(family -> wanted.contains("family " + ((ScalarTree) family).text()))) {
                wanted.add(part.key());
            }
        }
    }

    private static void named(Tree tree, Set<String> wanted) {
        if (tree instanceof MapTree map) {
            map.entries().values().forEach(entry -> {
                if (entry.value() instanceof ScalarTree word && entry.key().equals("part")) {
                    wanted.add(word.text());
                } else if (entry.value() instanceof ScalarTree word && entry.key().equals("family")) {
                    wanted.add("family " + word.text());
                }
                named(entry.value(), wanted);
            });
        }
    }
}
