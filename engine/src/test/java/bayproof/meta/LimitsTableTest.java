package bayproof.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.demand.Limit;
import bayproof.support.Jobs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every figure of the trade says what it is and where it comes from, and something uses it. */
class LimitsTableTest {
    private static final Set<String> STATES = Set.of("seen", "from memory", "common practice");
    /** Names that are put together, such as those of ambients, begin with at least this much. */
    private static final int SHORTEST_BEGINNING = 4;

    private static Collection<Limit> limits() {
        return Jobs.asWritten(Jobs.CLEAN.get(0)).job().limits().all();
    }

    @Test
    void eachSaysWhatItIsAndWhereItComesFrom() {
        assertFalse(limits().isEmpty());
        for (Limit limit : limits()) {
            assertFalse(limit.says().isBlank(), limit.name());
            assertFalse(limit.says().endsWith("."), limit.name() + " ends with a period");
            assertFalse(limit.source().isBlank(), limit.name());
            assertTrue(STATES.contains(limit.state()), limit.name() + " is " + limit.state());
            if (limit.state().equals("common practice")) {
                assertTrue(limit.source().contains("common practice"), limit.name() + " does not own to having no source");
            }
        }
    }

    @Test
    void eachIsUsed() throws IOException {
        TreeSet<String> words = new TreeSet<>();
        RuleFiles.rules().forEach(rule -> words.addAll(RuleFiles.quoted(RuleFiles.drl(rule).replaceFirst("rule \"[^\"]*\"", ""))));
        for (Path sources : List.of(Path.of("src", "main", "java"), Path.of("..", "rules", "src", "main", "java"))) {
            try (Stream<Path> files = Files.walk(sources)) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(file -> words.addAll(RuleFiles.quoted(RuleFiles.text(file))));
            }
        }
        // The table of pin functions names the limit of each reading.
        words.addAll(List.of(RuleFiles.text(Path.of("..", "shared", "pin-functions.yaml")).split("[^a-z0-9-]+")));
        List<String> unused = new ArrayList<>();
        for (Limit limit : limits()) {
            boolean begun = words.stream().anyMatch(word -> word.length() >= SHORTEST_BEGINNING && word.endsWith("-") && limit.name().startsWith(word));
            if (!words.contains(limit.name()) && !begun) {
                unused.add(limit.name());
            }
        }
        assertEquals(List.of(), unused);
    }
}
