package bayproof.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import bayproof.cases.CaseFile.Case;
import bayproof.demand.Outcome;
import bayproof.judge.RuleBase;
import bayproof.judge.Verdict;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every case of every rule, and that together they are enough. */
class CasesTest {
    private static final Path MATRIX = Path.of("target", "fault-matrix.csv");
    private static final List<CaseFile> FILES = CaseFile.all();
    /** Each case is carried out once; what was seen then serves all tests. */
    private static final Map<Case, Seen> SEEN = new ConcurrentHashMap<>();

    /**
     * What was seen when a case was carried out.
     *
     * @param differences from what the case says
     * @param moved       what moved and counts
     * @param numeric     whether its own rule gave a number
     */
    private record Seen(List<String> differences, Set<Said> moved, boolean numeric) {
        static Seen of(Case one) {
            return SEEN.computeIfAbsent(one, any -> {
                Trial trial = Trial.of(one);
                return new Seen(trial.differences(), trial.moved(), isNumeric(trial.after(), one.rule()));
            });
        }
    }

    @TestFactory
    Stream<DynamicContainer> everyCaseDoesWhatItSays() {
        Tally.count("cases", FILES.stream().mapToLong(file -> file.cases().size()).sum());
        return FILES.stream().map(file -> DynamicContainer.dynamicContainer(file.rule(), file.path().toUri(), file.cases().stream()
                .map(one -> DynamicTest.dynamicTest(one.title(), () -> {
                    List<String> differences = Seen.of(one).differences();
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
        return Jobs.CLEAN.stream().anyMatch(job -> isNumeric(Jobs.asWritten(job), file.rule()))
                || file.cases().stream().anyMatch(one -> Seen.of(one).numeric());
    }

    private static boolean isNumeric(Evaluation evaluation, String rule) {
        return evaluation.judgment().verdicts().stream().anyMatch(verdict -> verdict.rule().id().equals(rule) && !Double.isNaN(verdict.margin()));
    }

    @Test
    void oneCaseInFourIsAMistakeThatMovesTwoRules() {
        List<Case> all = FILES.stream().flatMap(file -> file.cases().stream()).toList();
        long wide = all.parallelStream().filter(one -> Seen.of(one).moved().stream().map(Said::rule).distinct().count() >= 2).count();
        Tally.say(wide + " of " + all.size() + " cases move two rules or more");
        assertTrue(wide * 4 >= all.size(), wide + " of " + all.size() + " cases move two rules or more; one in four is needed");
    }

    /**
     * Rules down, cases across: which case of which rule turns it to broken, or leaves it unshown. A rule that no case breaks proves nothing; one that
     * cannot be broken, as its case file says and why, is at least left unshown by one.
     */
    @Test
    void everyRuleIsBrokenByACase() throws IOException {
        Map<String, Map<Outcome, TreeMap<String, Integer>>> matrix = new TreeMap<>();
        RuleBase.built().rules().keySet().forEach(rule -> matrix.put(rule, Map.of(Outcome.BROKEN, new TreeMap<>(), Outcome.UNSHOWN, new TreeMap<>())));
        FILES.parallelStream().flatMap(file -> file.cases().stream()).forEach(Seen::of);
        for (CaseFile file : FILES) {
            for (Case one : file.cases()) {
                Seen.of(one).moved().stream().filter(Said::isTrouble).map(said -> List.of(said.rule(), said.outcome())).distinct()
                        .forEach(hit -> matrix.get((String) hit.get(0)).get((Outcome) hit.get(1)).merge(file.rule(), 1, Integer::sum));
            }
        }
        List<String> lines = new ArrayList<>(List.of("rule,broken-by-cases,unshown-by-cases,of-rules,broken-by-cases-of"));
        List<String> unbroken = new ArrayList<>();
        matrix.forEach((rule, hits) -> {
            TreeMap<String, Integer> broken = hits.get(Outcome.BROKEN);
            TreeMap<String, Integer> unshown = hits.get(Outcome.UNSHOWN);
            Set<String> of = new TreeSet<>(broken.keySet());
            of.addAll(unshown.keySet());
            lines.add(String.join(",", rule, "" + sum(broken), "" + sum(unshown), "" + of.size(), String.join(" ", broken.keySet())));
            boolean cannot = FILES.stream().anyMatch(file -> file.rule().equals(rule) && file.lacks().containsKey("broken"));
            if ((cannot ? unshown : broken).isEmpty()) {
                unbroken.add(rule);
            }
        });
        Files.createDirectories(MATRIX.getParent());
        Files.write(MATRIX, lines);
        long byOthers = matrix.entrySet().stream().filter(row -> row.getValue().get(Outcome.BROKEN).keySet().stream().anyMatch(rule -> !rule.equals(row.getKey()))).count();
        Tally.say("fault matrix (engine/target/fault-matrix.csv): each rule broken by a case, " + byOthers + " of " + matrix.size() + " also by a case of another rule");
        assertEquals(List.of(), unbroken, "rules that no case breaks");
    }

    private static int sum(TreeMap<String, Integer> hits) {
        return hits.values().stream().mapToInt(Integer::intValue).sum();
    }
}
