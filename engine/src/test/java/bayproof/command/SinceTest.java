package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a change of a plan moved, which part of a review is shown, its colors and its times. */
class SinceTest {
    private static final String[] FAR_FUSE = {"length: 0.30 m", "length: 1.20 m"};

    @TempDir
    private Path folder;

    private String changed(String name, String... changes) throws Exception {
        return Jobs.changed(folder.resolve(name), changes);
    }

    @Test
    void theSectionNamesWhatGotWorseWithTheChangeThatAloneMovesIt() throws Exception {
        String far = changed("far", "length: 0.30 m", "length: 1.20 m", "interface.memory, method: plug-in-harness", "interface.memory, method: cut-and-join");
        Reply reply = Main.run("review", far, "--since", Jobs.CLEAN.toString());
        assertEquals(1, reply.status());
        String alone = Main.run("review", far).out();
        assertTrue(reply.out().startsWith(alone), "the review itself stays");
        String section = reply.out().substring(alone.length());
        assertTrue(section.replaceAll("\\s+", " ").matches(".*STOP runs\\.feed-1 plan\\.yaml:[0-9]+ fuse-near-battery Before: holds\\. .*300 mm.* Now: "
                + "broken, STOP\\. .*1\\.20 m; at most 1\\.02 m\\. Moved by: runs\\.feed-1\\.length: 0\\.30 m -> 1\\.20 m [^M].*"), section);
        assertAll(section.lines().map(line -> () -> assertTrue(line.codePointCount(0, line.length()) <= 80, line)));
        Reply back = Main.run("review", Jobs.CLEAN.toString(), "--since", far);
        assertEquals(0, back.status(), "the status is that of the plan");
        assertTrue(back.out().contains("GOT BETTER  6 checks") && !back.out().contains("GOT WORSE"), back.out());
    }

    @Test
    void nothingMovesBetweenAPlanAndItself() {
        String page = Main.run("review", Jobs.CLEAN.toString(), "--since", Jobs.CLEAN.toString()).out();
        assertTrue(page.contains(": 0 checks moved, 0 changes in the files\n") && page.endsWith("CHANGED IN THE FILES  nothing\n"), page);
    }

    @Test
    void asJsonEachMoveHasBothSidesAndItsReasons() throws Exception {
        JsonNode since = new ObjectMapper().readTree(Main.run("review", changed("far", FAR_FUSE), "--since", Jobs.CLEAN.toString(), "--as=json").out()).get("since");
        JsonNode worse = null;
        int numbers = 0;
        for (JsonNode move : since.get("moved")) {
            worse = move.get("sort").asText().equals("got worse") ? move : worse;
            numbers += move.get("sort").asText().equals("only the number moved") ? 1 : 0;
            assertFalse(move.at("/before/outcome").equals(move.at("/after/outcome")) && move.at("/before/measured").equals(move.at("/after/measured")),
                    move.toString());
            assertEquals("1.20 m", move.at("/moved-by/0/after").asText(), move.toString());
        }
        assertEquals("fuse-near-battery", worse.get("rule").asText());
        assertEquals("holds", worse.at("/before/outcome").asText());
        assertEquals("broken", worse.at("/after/outcome").asText());
        assertEquals(1.2, worse.at("/after/measured/value").asDouble(), 1e-12);
        assertTrue(numbers > 0, "a longer feed drops more");
        assertEquals(1, since.get("changed").size());
    }

    @Test
    void aSubjectThatIsNewOrGoneIsToldApartFromOneThatChanged() throws Exception {
        String without = changed("without", "  feed-1:", "  feed-one:");
        String page = Main.run("review", without, "--since", Jobs.CLEAN.toString()).out();
        assertTrue(page.matches("(?s).*\nNEW SUBJECT  .*runs\\.feed-one .*\nGONE SUBJECT  .*runs\\.feed-1 .*"), page);
        assertTrue(page.contains("Before: not there.") && page.contains("Now: not there."), page);
    }

    @Test
    void narrowingChangesWhatIsShownAndNeverTheAnswer() throws Exception {
        String far = changed("far", FAR_FUSE);
        String whole = Main.run("review", far).out();
        String answer = whole.lines().toList().get(1);
        for (List<String> narrow : List.of(List.of("--topic", "speakers"), List.of("--item=sub"), List.of("--zone", "door-left"),
                List.of("--topic=speakers", "--topic=routing", "--zone=door-left"))) {
            String[] line = java.util.stream.Stream.concat(java.util.stream.Stream.of("review", far), narrow.stream()).toArray(String[]::new);
            Reply reply = Main.run(line);
            assertEquals(1, reply.status(), "the far fuse still counts");
            assertEquals(answer, reply.out().lines().toList().get(1));
            assertFalse(reply.out().contains("fuse-near-battery"), reply.out());
            assertTrue(reply.out().lines().toList().get(2).matches("Shown: .*, [0-9]+ of [0-9]+ checks\\."), reply.out());
        }
        assertTrue(Main.run("review", far, "--item", "main-fuse", "--zone", "engine-bay").out().contains("fuse-near-battery"));
        JsonNode all = new ObjectMapper().readTree(Main.run("review", far, "--as=json").out());
        JsonNode one = new ObjectMapper().readTree(Main.run("review", far, "--as=json", "--topic=routing").out());
        assertEquals(all.get("counts"), one.get("counts"));
        assertEquals(one.at("/shown/checks").asInt(), one.get("verdicts").size());
        assertEquals(all.get("verdicts").size(), one.at("/shown/of").asInt());
        assertTrue(one.get("verdicts").size() > 0 && one.get("verdicts").size() < all.get("verdicts").size());
    }

    @Test
    void aSlipIsNamedWithWhatWasMeant() {
        String plan = Jobs.CLEAN.toString();
        assertAll(() -> assertMeant("routing", plan, "--topic", "rooting"), () -> assertMeant("amp-front", plan, "--item", "amp-fron"),
                () -> assertMeant("door-left", plan, "--zone", "door-lefft"), () -> assertMeant("never", plan, "--color", "nevr"),
                () -> assertMeant("../cases/street-show/plan.yaml", plan, "--since", "../cases/street-show"),
                () -> assertMeant("--since", plan, "--sinse", plan));
    }

    private static void assertMeant(String meant, String... line) {
        String[] whole = java.util.stream.Stream.concat(java.util.stream.Stream.of("review"), java.util.Arrays.stream(line)).toArray(String[]::new);
        Reply reply = Main.run(whole);
        assertEquals(2, reply.status());
        assertEquals("", reply.out());
        assertTrue(reply.err().contains("Did you mean " + meant), reply.err());
    }

    @Test
    void colorIsAnAdditionForATerminalThatWantsIt() throws Exception {
        String far = changed("far", FAR_FUSE);
        String plain = Main.run("review", far).out();
        String colored = Main.run("review", far, "--color=always").out();
        assertFalse(plain.contains("\u001b"), "no terminal reads here");
        assertTrue(colored.contains("\u001b[1;35mSTOP\u001b[0m  Move the fuse"), colored);
        assertEquals(plain, colored.replaceAll("\u001b\\[[0-9;]*m", ""));
        assertFalse(Main.run("review", far, "--color=always", "--as=json").out().contains("\u001b"));
        assertTrue(Paint.wanted("auto", java.util.Map.of("TERM", "xterm"), true));
        assertFalse(Paint.wanted("auto", java.util.Map.of("TERM", "xterm"), false));
        assertFalse(Paint.wanted("auto", java.util.Map.of("TERM", "dumb"), true));
        assertFalse(Paint.wanted("auto", java.util.Map.of("NO_COLOR", "1"), true));
    }

    @Test
    void theTimesStandOnStandardErrorAndLeaveThePageAsItIs() {
        Reply reply = Main.run("review", Jobs.CLEAN.toString(), "--timing");
        assertEquals(Main.run("review", Jobs.CLEAN.toString()).out(), reply.out());
        for (String stage : List.of("reading", "binding", "facts", "rules", "remedies", "report")) {
            assertTrue(reply.err().matches("(?s).*\n  " + stage + " +[0-9]+\\.[0-9]{2}\n.*"), reply.err());
        }
        assertTrue(reply.err().matches("(?s).*\n  drop-full-sine +[0-9]+\\.[0-9]{2}\n.*"), reply.err());
    }
}
