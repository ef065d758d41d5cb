package bayproof.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.judge.RuleBase;
import bayproof.judge.RuleInfo;
import bayproof.read.FieldKeys;
import bayproof.read.Tree.Entry;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.report.CoveragePage;
import bayproof.report.TradeDemand;
import bayproof.report.TradeDemand.State;
import bayproof.report.TradeDemands;
import bayproof.support.Tally;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The tables of what the trade asks for are in step with the rules, and say how much is covered. */
class TradeDemandsTest {
    private static final Path TABLES = Path.of("..", "rules", "src", "main", "resources", "bayproof", "demands");
    private static final String ID = "[a-z0-9]+(-[a-z0-9]+)*";
    private static final Set<String> KEYS = Set.of("must", "sources", "due", "rule", "why-not", "open", "asks", "reads", "lacks");
    private static final Set<String> FORMS = Set.of("number", "one-of", "present", "attested", "true");
    private static final List<TradeDemand> ALL = TradeDemands.all();
    private static final Map<String, RuleInfo> RULES = RuleBase.built().rules();

    @Test
    void everyTableIsReadAndTopicsOfRulesHaveOne() {
        assertEquals(RuleFiles.names(TABLES, ".yaml"), new TreeSet<>(TradeDemands.topics()));
        RULES.values().forEach(rule -> assertTrue(TradeDemands.topics().contains(rule.topic()), rule.topic()));
    }

    @Test
    void anIdStandsOnce() {
        assertFalse(ALL.isEmpty());
        assertEquals(ALL.size(), ALL.stream().map(TradeDemand::id).distinct().count(), "two tables use one id");
        ALL.forEach(demand -> assertTrue(demand.id().matches(ID), demand.id()));
        assertEquals(ALL.size(), ALL.stream().map(TradeDemand::must).distinct().count(), "a demand stands twice");
    }

    @Test
    void everyRuleHasADemandAndEveryDemandARuleThatExists() {
        Set<String> named = ALL.stream().filter(demand -> demand.state() == State.RULED).map(TradeDemand::rule).collect(Collectors.toCollection(TreeSet::new));
        TreeSet<String> strange = new TreeSet<>(named);
        strange.removeAll(RULES.keySet());
        TreeSet<String> forgotten = new TreeSet<>(RULES.keySet());
        forgotten.removeAll(named);
        assertEquals(Set.of(), strange, "rules that do not exist");
        assertEquals(Set.of(), forgotten, "rules that no demand names");
    }

    @Test
    void aRuleIsDueAtTheGateOfItsDemandAndWeighsNoLess() {
        ALL.stream().filter(demand -> demand.state() == State.RULED && RULES.containsKey(demand.rule())).forEach(demand -> {
            RuleInfo rule = RULES.get(demand.rule());
            assertEquals(demand.gate(), rule.gate(), demand.id());
            assertTrue(rule.weight().atLeast(demand.weight()), demand.id() + " weighs more than its rule");
        });
    }

    @Test
    void aDemandIsASentenceWithASource() {
        ALL.forEach(demand -> {
            assertTrue(demand.must().matches("[A-Z].{15,170}\\."), demand.id());
            assertFalse(demand.sources().isEmpty(), demand.id() + " names no source");
            demand.sources().forEach(source -> assertTrue(source.length() > 5, demand.id()));
            assertTrue(demand.whyNot() == null || demand.whyNot().matches("[A-Z].{30,}\\."), demand.id() + " gives no reason");
        });
    }

    @Test
    void anOpenRuleIsNotWrittenYetAndWouldHaveOneGate() {
        Map<String, Set<String>> gates = new TreeMap<>();
        ALL.stream().filter(demand -> demand.state() == State.OPEN).forEach(demand -> {
            assertTrue(demand.open().matches(ID), demand.id());
            assertFalse(RULES.containsKey(demand.open()), demand.open() + " is a rule: name it in " + demand.id());
            gates.computeIfAbsent(demand.open(), any -> new TreeSet<>()).add(demand.gate().word());
        });
        gates.values().removeIf(due -> due.size() == 1);
        assertEquals(Map.of(), gates);
    }

    @Test
    void whatAnOpenRuleIsToReadExists() {
        TreeSet<String> known = FieldKeys.all();
        List<String> unknown = new ArrayList<>();
        rows().forEach((id, row) -> {
            assertTrue(KEYS.containsAll(row.entries().keySet()), id + " has the keys " + row.entries().keySet());
            boolean open = row.get("open") != null;
            assertEquals(open, row.get("asks") != null, id + ": an open demand, and no other, says what form it will have");
            assertTrue(!open || FORMS.contains(((ScalarTree) row.get("asks")).text()), id);
            assertTrue(open || row.get("reads") == null && row.get("lacks") == null, id + " has its rule: the rule says what it reads");
            RuleFiles.words(row, "reads").stream().filter(field -> !known.contains(field)).forEach(field -> unknown.add(id + ": " + field));
        });
        assertEquals(List.of(), unknown);
    }

    @Test
    void theCoverageIsTold() {
        Tally.say(CoveragePage.summary(ALL));
        ALL.stream().collect(Collectors.groupingBy(TradeDemand::topic, TreeMap::new, Collectors.toList()))
                .forEach((topic, demands) -> Tally.say("  " + topic + ": " + CoveragePage.summary(demands)));
        Tally.count("demands of the trade with a rule", ALL.stream().filter(demand -> demand.state() == State.RULED).count());
        assertEquals(rows().size(), ALL.size());
    }

    /** The rows as they are written, by id. */
    private static Map<String, MapTree> rows() {
        Map<String, MapTree> rows = new TreeMap<>();
        for (String topic : TradeDemands.topics()) {
            try {
                MapTree table = TreeReader.read(RuleFiles.text(TABLES.resolve(topic + ".yaml")).getBytes(StandardCharsets.UTF_8), topic + ".yaml");
                assertEquals("demands", ((ScalarTree) table.get("kind")).text());
                for (Entry row : ((MapTree) table.get("demands")).entries().values()) {
                    rows.put(row.key(), (MapTree) row.value());
                }
            } catch (UnusableInput e) {
                throw new AssertionError(e.getMessage(), e);
            }
        }
        return rows;
    }
}
