package bayproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.review.Looks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** How text is put on paper. */
class PaperTest {

    @Property
    void anyTextStaysOnThePaperAndLosesNoWord(@ForAll String text, @ForAll @IntRange(min = 0, max = 20) int indent) {
        Paper page = new Paper().hanging(" ".repeat(indent), text);
        StringBuilder kept = new StringBuilder();
        for (String line : page.lines()) {
            assertTrue(Plain.length(line) <= Paper.WIDTH, line);
            assertTrue(line.codePoints().noneMatch(Character::isISOControl), line);
            kept.append(line);
        }
        assertEquals(Plain.text(text).replace(" ", ""), kept.toString().replace(" ", ""));
    }

    @Test
    void aNumberStaysWithItsUnit() {
        Paper page = new Paper().line("x".repeat(74) + " 12.5 % more");
        assertEquals("x".repeat(74), page.lines().get(0));
        assertEquals("12.5 % more", page.lines().get(1));
    }

    @Test
    void anotherWayToKnowIsOnlyOfferedForWhatCanBeAsked() throws IOException {
        Set<String> keys = new TreeSet<>();
        Pattern key = Pattern.compile("key = \"([a-z-]+)\"");
        try (Stream<Path> files = Files.list(Path.of("src/main/java/bayproof/read"))) {
            for (Path file : files.toList()) {
                Matcher matcher = key.matcher(Files.readString(file));
                while (matcher.find()) {
                    keys.add(matcher.group(1));
                }
            }
        }
        Matcher limits = Pattern.compile("(?m)^  ([a-z][a-z-]*):$").matcher(Files.readString(Path.of("../shared/limits.yaml")));
        while (limits.find()) {
            keys.add(limits.group(1));
        }
        assertTrue(keys.containsAll(Looks.built().all().keySet()), () -> {
            Set<String> unknown = new TreeSet<>(Looks.built().all().keySet());
            unknown.removeAll(keys);
            return "nothing asks for " + unknown;
        });
    }
}
