package bayproof.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.demand.Weight;
import bayproof.judge.RuleBase;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.support.Jobs;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every rule has its three files, each sound in itself and in step with the others. */
class RuleFilesTest {
    private static final List<String> HEADINGS = List.of("Must hold", "What goes wrong", "Where it comes from", "Put right", "Prove it",
            "Cannot see");
    private static final Pattern HEADING = Pattern.compile("(?m)^## (.*)$");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w$])[0-9]");
    /** What would let one rule act on another. */
    private static final Pattern ACTS = Pattern.compile("\\b(insert|insertLogical|modify|update|delete|retract|setFocus|halt)\\b");

    static TreeSet<String> rules() {
        return RuleFiles.rules();
    }

    @Test
    void rulesCardsCasesAndTheBuiltBaseNameTheSameSet() {
        assertFalse(rules().isEmpty());
        assertEquals(rules(), RuleFiles.names(RuleFiles.RULES, ".md"), "cards");
        assertEquals(rules(), RuleFiles.names(RuleFiles.CASES, ".yaml"), "cases");
        TreeSet<String> built = new TreeSet<>();
        RuleBase.built().rules().values().forEach(rule -> built.add(rule.topic() + "/" + rule.id()));
        assertEquals(rules(), built, "the built rule base");
        TreeSet<String> ids = new TreeSet<>();
        rules().forEach(name -> ids.add(RuleFiles.id(name)));
        assertEquals(rules().size(), ids.size(), "an id stands in two topics");
    }

    // DRL

    @ParameterizedTest
    @MethodSource("rules")
    void aFileHoldsOneRuleOfItsName(String name) {
        PackageDescr file = LeftSide.parse(RuleFiles.drl(name));
        assertEquals("bayproof.rules." + RuleFiles.topic(name), file.getName());
        assertEquals(List.of(RuleFiles.id(name)), file.getRules().stream().map(RuleDescr::getName).toList());
        assertTrue(file.getFunctions().isEmpty() && file.getTypeDeclarations().isEmpty() && file.getAttributes().isEmpty(),
                "nothing but imports, the collector and the rule");
        RuleDescr rule = file.getRules().get(0);
        assertTrue(rule.getAnnotationNames().containsAll(List.of("weight", "gate", "about")), "it says " + rule.getAnnotationNames());
        assertFalse(rule.hasParent());
        assertEquals(List.of(), mistakes(rule, file));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void noFigureStandsInARule(String name) {
        assertFalse(NUMBER.matcher(RuleFiles.bare(RuleFiles.drl(name))).find(), "a figure stands in " + name);
    }

    private static List<String> mistakes(RuleDescr rule, PackageDescr file) {
        List<String> mistakes = new ArrayList<>(rule.getAttributes().keySet());
        String consequence = RuleFiles.bare(rule.getConsequence().toString());
        ACTS.matcher(consequence).results().map(MatchResult::group).forEach(mistakes::add);
        if (consequence.split("judge\\.demand\\(", -1).length != 2) {
            mistakes.add("its consequence does not state one demand");
        }
        mistakes.addAll(LeftSide.mistakes(rule, file.getImports().stream().map(one -> one.getTarget()).toList()));
        return mistakes;
    }

    @Test
    void aSoundRuleHasNoMistakes() {
        PackageDescr file = LeftSide.parse("package bayproof.rules.a\nimport bayproof.vocabulary.SourceRun\n"
                + "rule \"a\" when $r : SourceRun() then judge.demand( drools.getRule(), $r ); end");
        assertEquals(List.of(), mistakes(file.getRules().get(0), file));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "rule \"a\" salience 10 when $r : SourceRun() then judge.demand( drools.getRule(), $r ); end",
        "rule \"a\" no-loop true when $r : SourceRun() then judge.demand( drools.getRule(), $r ); end",
        "rule \"a\" when $r : SourceRun() then insert( $r ); judge.demand( drools.getRule(), $r ); end",
        "rule \"a\" when $r : SourceRun() then update( $r ); judge.demand( drools.getRule(), $r ); end",
        "rule \"a\" when $r : SourceRun() then judge.demand( drools.getRule(), $r ); judge.demand( drools.getRule(), $r ); end",
        "rule \"a\" when $r : SourceRun() then end",
        "rule \"a\" when $r : SourceRun() eval( true ) then judge.demand( drools.getRule(), $r ); end"})
    void whatMayNotStandInARuleIsFound(String drl) {
        PackageDescr file = LeftSide.parse("package bayproof.rules.a\nimport bayproof.vocabulary.SourceRun\n" + drl);
        assertFalse(mistakes(file.getRules().get(0), file).isEmpty());
    }

    // cards

    @ParameterizedTest
    @MethodSource("rules")
    void aCardHasItsHeadingsSourcesAndLimits(String name) {
        MapTree head = RuleFiles.head(name);
        assertEquals(RuleFiles.id(name), ((ScalarTree) head.get("rule")).text());
        assertEquals(HEADINGS, HEADING.matcher(RuleFiles.card(name)).results().map(found -> found.group(1).strip()).toList());
        for (String section : RuleFiles.card(name).split("(?m)^## .*$", -1)) {
            assertFalse(section.isBlank(), "an empty heading in " + name);
        }
        assertTrue(RuleFiles.card(name).contains("\n# " + ((ScalarTree) head.get("title")).text() + "\n"), "the title stands over the page");
        assertFalse(RuleFiles.words(head, "sources").isEmpty(), "no source is named");
        List<String> limits = RuleFiles.words(head, "limits");
        limits.forEach(limit -> assertTrue(isLimit(limit), "no limit is named " + limit));
        TreeSet<String> used = RuleFiles.quoted(RuleFiles.drl(name));
        used.removeIf(word -> !isLimit(word));
        // A limit may have the name of the rule that it belongs to.
        if (!RuleFiles.quoted(RuleFiles.drl(name).replaceFirst("rule \"[^\"]*\"", "")).contains(RuleFiles.id(name))) {
            used.remove(RuleFiles.id(name));
        }
        assertTrue(limits.containsAll(used), "the card names " + limits + ", the rule uses " + used);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void whatNobodyMayAcceptIsAStopAndSaysWhoIsHurt(String name) {
        if (RuleFiles.head(name).get("no-waiver") instanceof ScalarTree reason) {
            assertTrue(reason.text().length() > 10, reason.text());
            assertTrue(RuleBase.built().rules().get(RuleFiles.id(name)).weight() == Weight.STOP || RuleFiles.id(name).equals("waiver-in-force"), name);
        }
    }

    private static boolean isLimit(String name) {
        return Jobs.asWritten(Jobs.CLEAN.get(0)).job().limits().has(name);
    }
}
