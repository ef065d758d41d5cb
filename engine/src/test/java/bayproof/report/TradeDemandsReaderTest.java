package bayproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.demand.Gate;
import bayproof.demand.Weight;
import bayproof.judge.RuleFault;
import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import bayproof.report.TradeDemand.State;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reading and counting on a small table of its own. */
class TradeDemandsReaderTest {
    private static final String HEAD = "  a: { must: A thing is so., sources: [ common practice ], due: { gate: handover, weight: fix }, ";

    private static List<TradeDemand> read(String rows) throws UnusableInput {
        return TradeDemands.of("grounds", TreeReader.read(("demands:\n" + rows + "\n").getBytes(StandardCharsets.UTF_8), "grounds.yaml"));
    }

    @Test
    void aRowIsReadWhole() throws Exception {
        assertEquals(List.of(new TradeDemand("a", "grounds", "A thing is so.", List.of("common practice"), Gate.HANDOVER, Weight.FIX, null, "Nobody can.", null)),
                read(HEAD + "why-not: Nobody can. }"));
    }

    @ParameterizedTest
    @ValueSource(strings = {HEAD + "}", HEAD + "rule: b, open: c }", HEAD + "rule: b, why-not: c }", "  a: word",
        "  a: { must: So., sources: [ x ], due: { gate: noon, weight: fix }, rule: b }", "  a: { must: So., sources: [ x ], rule: b }",
        "  a: { sources: [ x ], due: { gate: handover, weight: fix }, rule: b }"})
    void aFaultyRowIsRefusedWithItsPlace(String row) {
        assertTrue(assertThrows(RuleFault.class, () -> read(row)).getMessage().startsWith("grounds.yaml:2"), row);
    }

    @Test
    void aPageListsEachDemandWithWhatBecomesOfItAndCountsThem() throws Exception {
        List<TradeDemand> demands = read(HEAD + "rule: some-rule }\n" + HEAD.replace("a:", "b:") + "open: other-rule }\n"
                + HEAD.replace("a:", "c:") + "open: other-rule }\n" + HEAD.replace("a:", "d:") + "why-not: Nobody can see it. }");
        assertEquals(List.of(State.RULED, State.OPEN, State.OPEN, State.REASONED), demands.stream().map(TradeDemand::state).toList());
        assertEquals("4 demands: 1 with a rule (25.0 %), 1 with a reason why not, 2 open.", CoveragePage.summary(demands));
        String page = CoveragePage.of(demands).text();
        assertTrue(page.startsWith("GROUNDS\n  A thing is so.\n      FIX, handover: some-rule\n"), page);
        assertTrue(page.contains("      FIX, handover: open, other-rule\n"), page);
        assertTrue(page.contains("      FIX, handover: no rule. Nobody can see it.\n"), page);
        assertTrue(page.matches("(?s).*\ngrounds +4 +1 +1 +2\n.*"), page);
    }
}
