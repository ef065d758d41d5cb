package bayproof.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.judge.RuleBase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Finding a rule by its topic, its source, or what went wrong; and what the trade asks for beyond the rules. */
class WhyTest {
    private static final int WIDTH = 80;

    private static String answer(String... arguments) {
        Reply reply = Main.run(arguments);
        assertEquals(Reply.CLEAR, reply.status(), reply.err());
        reply.out().lines().forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= WIDTH, line));
        return reply.out();
    }

    private static List<String> rulesNamed(String page) {
        return page.lines().map(line -> line.strip().split(" ")[0]).filter(RuleBase.built().rules()::containsKey).distinct().sorted().toList();
    }

    /** Former ids stand in a list of the test resources. */
    @Test
    void aFormerIdLeadsToItsRuleOrToTheReasonWhyItIsGone() {
        String page = Main.run("why", "fuse-close-to-battery").out();
        assertTrue(page.startsWith("fuse-close-to-battery is called fuse-near-the-battery since rule base 2.\n\n"), page);
        assertTrue(page.endsWith(Main.run("why", "fuse-near-battery").out()), page);
        Reply gone = Main.run("why", "main-fuse-painted-red");
        assertEquals(Reply.UNUSABLE, gone.status());
        assertTrue(gone.err().replaceAll("\\s+", " ").contains("main-fuse-painted-red was withdrawn in rule base 3: a color tells nobody what a fuse guards."), gone.err());
    }

    @Test
    void aTopicNarrowsTheListToItsRules() {
        List<String> expected = RuleBase.built().rules().values().stream().filter(rule -> rule.topic().equals("grounds")).map(rule -> rule.id()).sorted().toList();
        assertFalse(expected.isEmpty());
        assertEquals(expected, rulesNamed(answer("why", "--topic", "grounds")));
        assertTrue(rulesNamed(answer("why", "--topic=grounds", "--topic=routing")).containsAll(List.of("ground-sealed", "bend-kept")));
    }

    @Test
    void aSourceIsFoundOnCardsAndInLimits() throws Exception {
        String card = Files.readString(Path.of("../rules/src/main/resources/bayproof/rules/protection/fuse-near-battery.md"));
        assertTrue(card.contains("  - 33 CFR 183.455(b)"), "the card names it");
        String page = answer("why", "--source", "33 cfr  183.455");
        assertTrue(rulesNamed(page).containsAll(List.of("fuse-near-battery", "fuse-within-ampacity")), page);
        assertFalse(rulesNamed(page).contains("bend-kept"), page);
        assertTrue(page.contains("  - limit fuse-distance-sheathed: 33 CFR 183.455(b)(2)"), page);
        assertEquals(List.of("fuse-near-battery"), rulesNamed(answer("why", "--source=183.455", "--topic=protection")).stream()
                .filter(rule -> rule.equals("fuse-near-battery")).toList());
        assertFalse(rulesNamed(answer("why", "--source=183.455", "--topic=integration")).contains("fuse-near-battery"));
        assertTrue(answer("why", "--source", "a source that nobody names").startsWith("No rule and no limit names a source"));
    }

    @Test
    void mistakesStandUnderTheRuleThatFindsThem() {
        String all = answer("why", "--mistake").replaceAll("\\s+", " ");
        assertTrue(all.contains("fuse-near-battery STOP, protection - The main fuse was moved to the far side of the engine bay"), all);
        assertFalse(all.contains("Bare cable just inside seven inches"), "what holds is no mistake");
        String grommet = answer("why", "--mistake", "grommet thicker");
        assertEquals(List.of("edge-protected"), rulesNamed(grommet), grommet);
        assertEquals(grommet, answer("why", "--mistake=THICKER grommet"));
        assertTrue(answer("why", "--mistake", "no such words").startsWith("No case makes a mistake"));
    }

    @Test
    void aCaseThatMovesSeveralRulesNamesTheOthers() {
        String page = answer("why", "--mistake", "coils parallel more power").replaceAll("\\s+", " ");
        assertTrue(page.contains("(also body-strap-carries-return, "), page);
    }

    @Test
    void theCoverageListsEachDemandOfATopicAndCounts() {
        String page = answer("why", "--coverage", "--topic", "grounds").replaceAll("\\s+", " ");
        assertTrue(page.contains("At most two eyelets lie on one fastener. FIX, before-order: few-eyelets-per-fastener"), page);
        assertTrue(page.matches(".* grounds [0-9]+ [0-9]+ [0-9]+ [0-9]+ [0-9]+ demands: [0-9]+ with a rule .* open\\. ?"), page);
        assertTrue(answer("why", "--coverage").length() > page.length());
    }

    @ParameterizedTest
    @CsvSource({"--limit=fuse-distance-bare,--coverage", "--mistake=x,--source=y", "fuse-near-battery,--mistake", "fuse-near-battery,--coverage"})
    void oneQuestionAtATime(String one, String other) {
        Reply reply = Main.run("why", one, other);
        assertEquals(Reply.UNUSABLE, reply.status(), reply.out());
        assertTrue(reply.err().contains("are two questions."), reply.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--source", "--topic=gronds", "--in=plan.yaml"})
    void whatCannotBeAnsweredIsRefused(String option) {
        assertEquals(Reply.UNUSABLE, Main.run("why", option).status());
    }

    @Test
    void aTopicNarrowsNoSinglePage() {
        assertEquals(Reply.UNUSABLE, Main.run("why", "fuse-near-battery", "--topic=grounds").status());
        assertTrue(Main.run("why", "--topic=gronds").err().contains("Did you mean grounds?"));
    }
}
