package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.judge.RuleBase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the review says, how it looks and with which status it ends. */
class ReviewTest {
    private static final int WIDTH = 80;
    private static final int HEIGHT = 24;

    private static final String[] FAR_FUSE = {"length: 0.30 m", "length: 1.20 m"};
    /** Broken in five ways, with a feed left out so that much is not shown as well. */
    private static final String[] WRECKED = {"length: 0.30 m", "length: 1.20 m", "firewall-left:   { edge: grommet, ",
        "firewall-left:   { edge: bare, ", "interface.memory, method: plug-in-harness", "interface.memory, method: cut-and-join",
        "interface.wake, method: plug-in-harness", "interface.wake, method: cut-and-join",
        "size: 8 AWG, length: 0.60 m, metal: copper", "length: 0.60 m", "sub.coil-1 + sub.coil-2",
        "sub.coil-1 | sub.coil-2 | speaker-left.coil-1 | speaker-right.coil-1", "size: 4 AWG, length: 0.70 m, metal: copper", "metal: unknown"};

    @TempDir
    private Path folder;

    static Stream<Arguments> pages() {
        return Stream.of(Arguments.of("clean", new String[0]), Arguments.of("far fuse", FAR_FUSE), Arguments.of("wrecked", WRECKED),
                Arguments.of("nothing measured", new String[] {"metal: copper", "metal: unknown", "size: 4 AWG", "size: unknown", "insulation: 105 °C",
                    "insulation: unknown"}));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pages")
    void aPageFitsItsPaperAndTheFirstScreenEndsWithWhatHasToWait(String name, String[] changes) throws Exception {
        Reply reply = Main.run("review", Jobs.changed(folder, changes), "--all", "--gate", "handover");
        List<String> lines = reply.out().lines().toList();
        assertAll(lines.stream().map(line -> () -> assertTrue(line.codePointCount(0, line.length()) <= WIDTH, line)));
        List<String> first = lines.subList(0, lines.indexOf("-".repeat(WIDTH)));
        assertTrue(first.size() <= HEIGHT, first.size() + " lines");
        assertTrue(first.get(first.size() - 1).startsWith("Not yet: "), reply.out());
        assertTrue(first.stream().anyMatch(line -> line.startsWith("Today you may: ")), reply.out());
        assertTrue(first.get(1).matches("(DO NOT HAND THE KEYS BACK YET - [0-9]+ stop, [0-9]+ fix|NOTHING STANDS AGAINST HANDOVER\\. [0-9]+ stop, [0-9]+ fix)\\. [0-9]+ facts? not shown, [0-9]+ assumed\\."),
                first.get(1));
        assertFalse(reply.out().toLowerCase(java.util.Locale.ROOT).matches("(?s).*\\b(safe|ok|baseline|severity|finding|autofix)\\b.*"));
    }

    @Test
    void aBrokenStopStandsOnTheFirstScreenWithRemedyNumberLimitPlaceAndRule() throws Exception {
        String page = Main.run("review", Jobs.changed(folder, FAR_FUSE)).out();
        String first = page.substring(0, page.indexOf("-----")).replaceAll("\\s+", " ");
        assertTrue(first.contains("DO NOT ORDER YET - 1 stop, 0 fix."), first);
        assertTrue(first.matches(".*STOP Move the fuse to within [0-9.]+ m of the battery post.*feed-1, plan\\.yaml:38 1\\.20 m, "
                + "limit 1\\.02 m \\(others: why fuse-near-battery\\).*"), first);
        String rest = page.substring(page.indexOf("-----"));
        assertTrue(rest.contains("CAUTION  A battery post is live"), rest);
    }

    @Test
    void theStatusSaysWhetherSomethingCounts() throws Exception {
        String cut = Jobs.changed(folder.resolve("cut"), "interface.memory, method: plug-in-harness", "interface.memory, method: cut-and-join");
        String unproved = Jobs.changed(folder.resolve("unproved"), "reading: 12.6 V", "reading: unknown");
        String nothing = Files.writeString(folder.resolve("nothing.yaml"), "bayproof: 1\n").toString();
        assertAll(
                () -> assertEquals(0, Main.run("review", Jobs.CLEAN.toString()).status(), "all holds"),
                () -> assertEquals(1, Main.run("review", cut).status(), "a broken fix counts"),
                () -> assertEquals(0, Main.run("review", cut, "--at-least", "stop").status(), "and is lighter than stop"),
                () -> assertEquals(0, Main.run("review", unproved).status(), "an unshown stop is due later"),
                () -> assertEquals(1, Main.run("review", unproved, "--gate=before-power", "--at-least=stop").status(), "and counts when it is due"),
                () -> assertEquals(2, Main.run("review", nothing).status(), "nothing to judge"),
                () -> assertEquals(2, Main.run("review", folder.resolve("none.yaml").toString()).status(), "no such file"),
                () -> assertEquals(2, Main.run("review", cut, "--gate", "before-lunch").status(), "no such gate"),
                () -> assertEquals(2, Main.run("review").status(), "no plan"),
                () -> assertEquals(2, Main.run("reveiw", cut).status(), "no such command"),
                () -> assertEquals(2, Main.run().status(), "no command"),
                () -> assertEquals(0, Main.run("review", "--help").status(), "help"),
                () -> assertEquals(3, Main.run((String[]) null).status(), "whatever is thrown is a fault of ours"));
    }

    @Test
    void aSlipOnTheCommandLineIsNamedWithWhatWasMeant() {
        assertAll(
                () -> assertMeant("--gate", "review", "x.yaml", "--gaet", "handover"),
                () -> assertMeant("review", "reveiw"),
                () -> assertMeant("--help", "help"),
                () -> assertMeant("handover", "review", "x.yaml", "--gate", "handovr"),
                () -> assertMeant("fuse-near-battery", "why", "fuse-near-batery"),
                () -> assertMeant("fuse-distance-bare", "why", "--limit", "fuse-distance-bear"),
                () -> assertMeant("../cases/street-show/plan.yaml", "review", Jobs.CLEAN.getParent().toString()));
    }

    private static void assertMeant(String meant, String... line) {
        Reply reply = Main.run(line);
        assertEquals(2, reply.status());
        assertTrue(reply.err().contains("Did you mean " + meant), reply.err());
    }

    @Test
    void everyMistakeOfAPlanIsNamedAtOnceWithItsPlace() throws Exception {
        String[] slips = {"rating: 80 A", "rating: 80", "size: 4 AWG, length: 0.30 m", "size: 4 AWH, length: 0.30 m",
            "cover: closed-tube", "cover: closed-tub", "from: main-fuse.out", "from: main-fues.out", "length: 0.45 m", "length: \"0,45 m\"",
            "length: 3.40 m", "lenght: 3.40 m", "door-left-boot ]", "door-lefft-boot ]", "net: sub.coil-1 +", "net: sub.coil-1 !",
            "firewall-left:   { edge: grommet, ", "firewall-left:   { edge: gromet, ", "by: meter, who: apprentice, when: 2026-11-19T10:20",
            "by: metre, who: apprentice, when: 2026-11-19T10:20"};
        String plan = Jobs.changed(folder, slips);
        Reply reply = Main.run("review", plan);
        assertEquals(2, reply.status());
        assertEquals("", reply.out());
        List<String> written = Files.readAllLines(Path.of(plan));
        for (int i = 1; i < slips.length; i += 2) {
            String slip = slips[i];
            int line = 1 + written.indexOf(written.stream().filter(one -> one.contains(slip)).findFirst().orElseThrow());
            assertTrue(Pattern.compile("plan\\.yaml:" + line + ":[0-9]+:").matcher(reply.err()).find(), slip + ", line " + line + " in\n" + reply.err());
        }
        assertTrue(reply.err().endsWith("10 mistakes. Nothing was judged.\n"), reply.err());
        assertAll(reply.err().lines().map(line -> () -> assertTrue(line.length() <= WIDTH, line)));
    }

    @Test
    void nothingInAPlanActsOnTheTerminal() throws Exception {
        String hostile = "\"\\e[2J\\x9b31m\\u202Egnp.exe\\a\\r\\nTAG T-0\"";
        String plan = Jobs.changed(folder, "title: Street show sound", "title: " + hostile, "tag: T-1042", "tag: " + hostile,
                "method: plug-in-harness", "method: cut-and-join");
        for (String form : List.of("text", "json")) {
            String page = Main.run("review", plan, "--all", "--as", form).out();
            assertTrue(page.contains("gnp.exe"), "the title is printed");
            assertTrue(page.codePoints().allMatch(point -> point == '\n' || !Character.isISOControl(point)
                    && Character.getType(point) != Character.FORMAT), form);
        }
        String broken = Jobs.changed(folder.resolve("broken"), "rating: 80 A", "rating: \"\\e[31m\\u202E80\"");
        assertTrue(Main.run("review", broken).err().codePoints().allMatch(point -> point == '\n' || !Character.isISOControl(point)
                && Character.getType(point) != Character.FORMAT));
    }

    @Test
    void aLooserShopLimitIsSaidInEveryForm() throws Exception {
        String limits = Files.writeString(folder.resolve("limits.yaml"), "bayproof: 1\nkind: limits\nlimits:\n"
                + "  fuse-distance-sheathed: { at-most: { stop: 1.30 m }, reason: tray under the seat }\n").toString();
        String plan = Jobs.changed(folder, FAR_FUSE);
        for (String[] line : new String[][] {{"review", plan, "--limits", limits}, {"review", plan, "--limits", limits, "--as=json"},
            {"why", "fuse-near-battery", "--in", plan, "--limits", limits}, {"why", "fuse-near-battery", "--limits", limits},
            {"why", "--limit", "fuse-distance-sheathed", "--limits", limits}, {"why", "--limits", limits}}) {
            Reply reply = Main.run(line);
            assertEquals(0, reply.status(), reply.out() + reply.err());
            assertTrue(reply.out().contains("tray under the seat"), String.join(" ", line) + "\n" + reply.out());
        }
    }

    @Test
    void everyRuleHasAPageThatFitsItsPaper() {
        String list = Main.run("why").out();
        for (String rule : RuleBase.built().rules().keySet()) {
            assertTrue(list.contains("  " + rule + " "), rule);
            Reply page = Main.run("why", rule);
            assertEquals(0, page.status(), page.err());
            assertTrue(page.out().contains("MUST HOLD") && page.out().contains("SOURCES") && page.out().contains("CASES\n  - "), page.out());
            String onPlan = Main.run("why", rule, "--in", Jobs.CLEAN.toString()).out();
            assertTrue(onPlan.contains("What is known of it:") || onPlan.contains("does not apply"), onPlan);
            assertFalse(onPlan.contains("Lambda"), onPlan);
            assertAll((list + page.out() + onPlan).lines().map(line -> () -> assertTrue(line.codePointCount(0, line.length()) <= WIDTH, line)));
        }
    }
}
