package bayproof.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.TreeReader;
import bayproof.read.UnusableInput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A case that is wrong is found, and what is wrong with it is said. */
class TrialTest {
    private static final String FAR = "change: { plan: { runs: { feed-1: { length: 1.20 m } } } }";
    private static final String BROKEN = "{ rule: fuse-near-battery, subject: runs.feed-1, outcome: broken, weight: stop }";

    private static CaseFile file(String one) {
        String text = "bayproof: 1\nkind: cases\nrule: fuse-near-battery\ncases:\n  - { case: trial, base: street-show, " + one + " }\n";
        try {
            return CaseFile.of(Path.of("trial.yaml"), TreeReader.read(text.getBytes(StandardCharsets.UTF_8), "trial.yaml"));
        } catch (UnusableInput e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    private static List<String> differences(String one) {
        return Trial.of(file(one).cases().get(0)).differences();
    }

    @Test
    void aRightCaseHasNoDifferences() {
        assertEquals(List.of(), differences(FAR + ", expect: [ " + BROKEN + " ]"));
    }

    @Test
    void whatMovedUnexpectedlyAndWhatDidNotMoveAreBothSaid() {
        List<String> found = differences(FAR + ", expect: [ { rule: fuse-near-battery, subject: runs.feed-1, outcome: broken, weight: fix } ]");
        assertEquals(2, found.size(), found.toString());
        assertTrue(found.get(0).startsWith("moved and was not expected: fuse-near-battery on runs.feed-1: broken, stop"), found.get(0));
        assertTrue(found.get(1).startsWith("expected and did not happen: fuse-near-battery on runs.feed-1: broken, fix; it says broken, stop"), found.get(1));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{ rule: fuse-near-battery, subject: runs.feed-1, outcome: holds } | did not happen",
        "{ rule: fuse-near-battery, subject: runs.feed-1, outcome: not-applicable } | did not happen",
        "{ rule: fuse-near-battery, subject: runs.feed-9, outcome: holds } | there is no such verdict",
        "{ rule: drop-full-sine, subject: items.amp-sub, outcome: broken, because: why } | it says holds",
        "{ rule: drop-full-sine, subject: items.amp-sub, outcome: holds } | says because",
        "{ rule: fuse-near-battery, subject: runs.feed-1, outcome: broken } | said twice"})
    void aWrongClaimIsFound(String claim, String says) {
        List<String> found = differences(FAR + ", expect: [ " + BROKEN + ", " + claim + " ]");
        assertTrue(found.stream().anyMatch(one -> one.contains(says)), found.toString());
    }

    @Test
    void aCaseSpeaksOfItsOwnRule() {
        List<String> found = differences("change: { plan: { runs: { feed-1: { length: 0.25 m } } } }, "
                + "expect: [ { rule: drop-full-sine, subject: items.amp-sub, outcome: holds, because: the feed is short } ]");
        assertEquals(List.of("the case says nothing of its own rule fuse-near-battery"), found);
    }

    // waiting for one fact

    private static final String NO_FEED = "change: { plan: { runs: { feed-1: null } } }, "
            + "expect: [ { rule: fuse-near-battery, subject: supply.sources.start-battery, outcome: unshown } ]";

    @Test
    void whatWaitsForOneFactNeedNotBeListed() {
        assertEquals(List.of(), differences(NO_FEED + ", waits-for: runs"));
        assertTrue(differences(NO_FEED).stream().anyMatch(one -> one.startsWith("moved and was not expected")));
        assertTrue(differences(NO_FEED + ", waits-for: runs.feed-2.length").stream().anyMatch(one -> one.startsWith("no further unshown")));
        assertEquals(List.of("no further unshown verdict waits for runs"), differences(FAR + ", waits-for: runs, expect: [ " + BROKEN + " ]"));
    }

    // the edge

    private static final String HOLDS = "edge: true, expect: [ { rule: fuse-near-battery, subject: runs.feed-1, outcome: holds } ]";

    @Test
    void theEdgeIsNear() {
        assertEquals(List.of(), differences("change: { plan: { runs: { feed-1: { length: 1.01 m } } } }, " + HOLDS));
        assertTrue(differences("change: { plan: { runs: { feed-1: { length: 0.90 m } } } }, " + HOLDS).get(0).startsWith("not at the edge"));
        assertEquals(List.of("a case at the edge says that its own rule holds"), differences(FAR + ", edge: true, expect: [ " + BROKEN + " ]"));
    }

    // unsound cases

    @ParameterizedTest
    @ValueSource(strings = {
        "change: {}", "change: { plan: {} }", "change: { plan: { runs: { feed-1: { length: 0.30 m } } } }",
        "change: { plan: { runs: { feed-9: null } } }", "change: { plan: { runs: { feed-1: { lenght: 1 m } } } }",
        "change: { plan: { pass-throughs: { no-such-hole: { edge: grommet } } } }"})
    void aChangeThatDoesNothingOrCannotBeReadIsFound(String change) {
        CaseFile file = file(change + ", expect: [ " + BROKEN + " ]");
        assertThrows(AssertionError.class, () -> Trial.of(file.cases().get(0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "change: { plan: {} }", "expect: []", "change: { plan: {} }, expect: [ { rule: a, outcome: broken } ]",
        "change: { plan: {} }, expect: [ { subject: a, outcome: broken } ]", "change: { plan: {} }, expects: []",
        "change: { plan: {} }, expect: [ { rule: a, subject: b, outcome: broken, weigth: stop } ]",
        "change: { plan: {} }, edge: yes, expect: []"})
    void aCaseThatLeavesSomethingOutOrMisspellsItIsFound(String one) {
        assertThrows(AssertionError.class, () -> file(one));
    }
}
