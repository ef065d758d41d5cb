package bayproof.review;

import bayproof.demand.Limits;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.Address;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Window;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All questions behind the verdicts that are not shown, those that most verdicts wait for first. A verdict that waits for
 * several things stands behind each of them, so the numbers of several questions may not be added; how many verdicts a
 * row of answers leaves nothing to ask for is {@link Question#clears()}.
 */
public final class Questions {
    /** So many questions are asked at once: what two people can find out in one round. */
    public static final int BUDGET = 25;

    private final Evaluation evaluation;
    private final Things things;
    private final Map<Need, String> keys = new HashMap<>();
    private final List<Verdict> waiting;
    private final List<OpenFact> facts;
    private final List<Question> all;

    private Questions(Evaluation evaluation, List<Verdict> verdicts) {
        this.evaluation = evaluation;
        this.things = new Things(evaluation.files(), evaluation.job());
        this.waiting = verdicts.stream().filter(verdict -> verdict.outcome() == Outcome.UNSHOWN).toList();
        this.facts = openFacts();
        this.all = asked();
    }

    /** The questions behind some verdicts of a job. */
    public static Questions of(Evaluation evaluation, List<Verdict> verdicts) {
        return new Questions(evaluation, verdicts);
    }

    public List<Question> all() {
        return all;
    }

    /** Those that are asked at once. */
    public List<Question> first() {
        return all.subList(0, Math.min(BUDGET, all.size()));
    }

    /** The single facts behind all questions. */
    public List<OpenFact> facts() {
        return facts;
    }

    /** The verdicts that are not shown. */
    public List<Verdict> waiting() {
        return waiting;
    }

    /** What a verdict waits for. Where every window decides only together with others, all of them are asked for. */
    public static List<Need> needs(Verdict verdict, Limits limits) {
        if (!verdict.needs().isEmpty() || verdict.outcome() != Outcome.UNSHOWN) {
            return verdict.needs();
        }
        return verdict.windows().stream().flatMap(window -> window.paths().stream()
                .map(path -> new Need(path, limits.named(window.limit()).says(), verdict.at()))).toList();
    }

    private List<Need> needs(Verdict verdict) {
        return needs(verdict, evaluation.job().limits());
    }

    /** The same for all needs that one answer meets: items of one part share its data sheet. */
    private String key(Need need) {
        return keys.computeIfAbsent(need, any -> things.shared(any.path()) + "\n" + any.ask());
    }

    private List<OpenFact> openFacts() {
        Map<String, List<Verdict>> checks = new LinkedHashMap<>();
        Map<String, Need> needs = new LinkedHashMap<>();
        Map<String, String> windows = new HashMap<>();
        for (Verdict verdict : waiting) {
            for (Need need : needs(verdict)) {
                needs.putIfAbsent(key(need), need);
                List<Verdict> behind = checks.computeIfAbsent(key(need), any -> new ArrayList<>());
                if (behind.isEmpty() || behind.get(behind.size() - 1) != verdict) {
                    behind.add(verdict);
                }
            }
            for (Window window : verdict.windows()) {
                String says = evaluation.job().limits().named(window.limit()).says();
                window.paths().forEach(path -> windows.put(key(new Need(path, says, verdict.at())), window.limit()));
            }
        }
        return needs.entrySet().stream().map(entry -> new OpenFact(entry.getValue(), Address.of(evaluation.files(), entry.getValue().path()),
                        windows.get(entry.getKey()), checks.get(entry.getKey())))
                .sorted(Comparator.<OpenFact>comparingInt(fact -> -fact.checks().size()).thenComparing(fact -> fact.checks().get(0))
                        .thenComparing(fact -> fact.need().path()).thenComparing(fact -> fact.need().ask())).toList();
    }

    private List<Question> asked() {
        Map<String, Thing> named = new LinkedHashMap<>();
        Map<String, List<OpenFact>> byThing = new LinkedHashMap<>();
        for (OpenFact fact : facts) {
            Thing thing = things.of(fact.need().path(), fact.address());
            named.putIfAbsent(thing.key(), thing);
            byThing.computeIfAbsent(thing.key(), any -> new ArrayList<>()).add(fact);
        }
        List<Question> questions = new ArrayList<>();
        byThing.forEach((key, some) -> questions.add(new Question(named.get(key), some, behind(some), 0)));
        questions.sort(Comparator.<Question>comparingInt(question -> -question.checks().size())
                .thenComparing(question -> question.checks().get(0)).thenComparing(question -> question.thing().key()));
        return counted(questions);
    }

    private static List<Verdict> behind(List<OpenFact> facts) {
        Map<String, Verdict> behind = new LinkedHashMap<>();
        facts.forEach(fact -> fact.checks().forEach(verdict -> behind.putIfAbsent(verdict.key(), verdict)));
        return behind.values().stream().sorted().toList();
    }

    /** The same with what each of them clears together with those before it. */
    private List<Question> counted(List<Question> questions) {
        Map<String, Set<String>> open = new LinkedHashMap<>();
        waiting.forEach(verdict -> {
            Set<String> keys = new LinkedHashSet<>();
            needs(verdict).forEach(need -> keys.add(key(need)));
            if (!keys.isEmpty()) {
                open.put(verdict.key(), keys);
            }
        });
        List<Question> counted = new ArrayList<>();
        int cleared = 0;
        for (Question question : questions) {
            Set<String> answered = new HashSet<>();
            question.facts().forEach(fact -> answered.add(key(fact.need())));
            for (Verdict verdict : question.checks()) {
                Set<String> left = open.get(verdict.key());
                if (left != null && left.removeAll(answered) && left.isEmpty()) {
                    cleared++;
                }
            }
            counted.add(new Question(question.thing(), question.facts(), question.checks(), cleared));
        }
        return counted;
    }
}
