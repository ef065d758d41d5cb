package bayproof.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import bayproof.cases.CaseFile.Case;
import bayproof.demand.Outcome;
import bayproof.judge.RuleBase;
import bayproof.judge.Verdict;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every case of every rule, and that together they are enough. */
class CasesTest {
    private static final List<CaseFile> FILES = CaseFile.all();

    @TestFactory
    Stream<DynamicContainer> everyCaseDoesWhatItSays() {
        Tally.count("cases", FILES.stream().mapToLong(file -> file.cases().size()).sum());
        return FILES.stream().map(file -> DynamicContainer.dynamicContainer(file.rule(), file.path().toUri(), file.cases().stream()
                .map(one -> DynamicTest.dynamicTest(one.title(), () -> {
                    List<String> differences = Trial.of(one).differences();
                    if (!differences.isEmpty()) {
                        fail(file.path() + ", \"" + one.title() + "\":\n  " + String.join("\n  ", differences));
                    }
                }))));
    }

    @Test
    void theJobsThatCasesStartFromAreClean() {
        for (String job : Jobs.CLEAN) {
            assertEquals(List.of(), Jobs.asWritten(job).judgment().verdicts().stream()
                    .filter(verdict -> verdict.outcome() != Outcome.HOLDS).map(Verdict::key).toList(), job);
        }
        Set<String> used = new LinkedHashSet<>();
        FILES.forEach(file -> file.cases().forEach(one -> used.add(one.base())));
        assertTrue(Jobs.CLEAN.containsAll(used), "cases start from " + used + ", and only " + Jobs.CLEAN + " are held clean");
    }

    @Test
    void everyRuleHasTheFourKindsOfCase() {
        Tally.count("rules", RuleBase.built().rules().size());
        List<String> wrong = new ArrayList<>();
        List<String> lacking = new ArrayList<>();
        Set<CaseFile> numeric = FILES.parallelStream().filter(CasesTest::isNumeric).collect(Collectors.toSet());
        for (String rule : RuleBase.built().rules().keySet()) {
            List<CaseFile> own = FILES.stream().filter(file -> file.rule().equals(rule)).toList();
            if (own.size() != 1) {
                wrong.add(rule + " has " + own.size() + " case files");
            } else if (kinds(own.get(0), numeric.contains(own.get(0)), wrong)) {
                lacking.add(rule);
            }
        }
        if (lacking.size() > RuleBase.built().rules().size() / 10) {
            wrong.add("more than one rule in ten lacks a kind of case: " + lacking);
        }
        assertEquals(List.of(), wrong);
    }

    /** Whether the file owns to lacking a kind. */
    private static boolean kinds(CaseFile file, boolean numeric, List<String> wrong) {
        List<String> wanted = new ArrayList<>(List.of("holds", "broken", "unshown", "not-applicable"));
        if (numeric) {
            wanted.add("edge");
        }
        file.lacks().keySet().stream().filter(kind -> !wanted.contains(kind)).forEach(kind -> wrong.add(file.rule() + " cannot lack " + kind));
        for (String kind : wanted) {
            boolean has = file.cases().stream().anyMatch(one -> kind.equals("edge") ? one.edge()
                    : one.own().anyMatch(claim -> claim.outcome().word().equals(kind)));
            if (has == file.lacks().containsKey(kind)) {
                wrong.add(file.rule() + (has ? " says it lacks a case that it has: " : " has no case of the kind ") + kind);
            }
        }
        return !file.lacks().isEmpty();
    }

    private static boolean isNumeric(CaseFile file) {
        return Stream.concat(Jobs.CLEAN.stream().map(Jobs::asWritten), file.cases().stream().map(one -> Trial.of(one).after()))
                .flatMap(evaluation -> evaluation.judgment().verdicts().stream())
                .anyMatch(verdict -> verdict.rule().id().equals(file.rule()) && !Double.isNaN(verdict.margin()));
    }

    @Test
    void oneCaseInFourIsAMistakeThatMovesTwoRules() {
        List<Case> all = FILES.stream().flatMap(file -> file.cases().stream()).toList();
        long wide = all.parallelStream().filter(one -> Trial.of(one).moved().stream().map(Said::rule).distinct().count() >= 2).count();
        Tally.say(wide + " of " + all.size() + " cases move two rules or more");
        assertTrue(wide * 4 >= all.size(), wide + " of " + all.size() + " cases move two rules or more; one in four is needed");
    }
}
