package bayproof.sweep;

import bayproof.demand.Outcome;
import bayproof.facts.FactBook;
import bayproof.judge.Verdict;
import bayproof.review.Evaluation;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What sweeps compare of an evaluation, without knowing any rule. */
final class Remark {
    /** Beyond this share two figures differ; less is rounding. */
    private static final double ROUNDING = 1e-9;

    private final Map<String, Verdict> verdicts = new HashMap<>();
    private final Set<String> outside = new HashSet<>();
    private final Map<String, Double> numbers = new TreeMap<>();
    private final Map<String, List<Window>> windows = new HashMap<>();

    Remark(Evaluation evaluation) {
        evaluation.judgment().verdicts().forEach(verdict -> verdicts.put(verdict.key(), verdict));
        evaluation.judgment().notApplicable().forEach(one -> outside.add(one.rule().id() + " " + one.subject()));
        evaluation.facts().numbers().all().forEach((path, figure) -> numbers.put(path, figure.value()));
        rests(evaluation.facts());
    }

    /** The windows that each value of each fact rests on; none for a value that was shown. */
    private void rests(FactBook facts) {
        for (Fact fact : facts.facts()) {
            for (RecordComponent component : fact.getClass().getRecordComponents()) {
                if (component.getType() == Shown.class) {
                    try {
                        Object value = component.getAccessor().invoke(fact);
                        if (value instanceof Shown.Given || value instanceof Shown.Assumed) {
                            windows.put(fact.getClass().getSimpleName() + " " + fact.subject() + " " + component.getName(),
                                    value instanceof Shown.Assumed<?> assumed ? assumed.windows().all() : List.of());
                        }
                    } catch (ReflectiveOperationException e) {
                        throw new IllegalStateException(e);
                    }
                }
            }
        }
    }

    /** Whether some verdict is broken or unshown that was not so before. */
    boolean isWorseThan(Remark before) {
        return verdicts.values().stream().anyMatch(verdict -> verdict.outcome() != Outcome.HOLDS
                && (before.verdicts.get(verdict.key()) == null || before.verdicts.get(verdict.key()).outcome() != verdict.outcome()));
    }

    /** Whether some value that was shown before now rests on an assumption. */
    boolean assumesMoreThan(Remark before) {
        return windows.entrySet().stream().anyMatch(now -> before.windows.containsKey(now.getKey())
                && now.getValue().stream().anyMatch(window -> isNew(window, before.windows.get(now.getKey()))));
    }

    /** One window stands for all values of its kind: with a second value its path shortens to what they have in common. */
    private static boolean isNew(Window window, List<Window> before) {
        return before.stream().filter(old -> old.limit().equals(window.limit()))
                .noneMatch(old -> old.path().equals(window.path()) || window.path().startsWith(old.path() + "."));
    }

    /** Whether any figure or verdict is another one. */
    boolean differsFrom(Remark other) {
        if (!verdicts.keySet().equals(other.verdicts.keySet()) || !outside.equals(other.outside)
                || !numbers.keySet().equals(other.numbers.keySet())) {
            return true;
        }
        return numbers.entrySet().stream().anyMatch(one -> differ(one.getValue(), other.numbers.get(one.getKey())))
                || verdicts.values().stream().anyMatch(one -> differ(one, other.verdicts.get(one.key())));
    }

    private static boolean differ(Verdict one, Verdict other) {
        return one.outcome() != other.outcome() || one.weight() != other.weight() || differ(measured(one), measured(other))
                || differ(limit(one), limit(other)) || word(one) != null && !word(one).equals(word(other));
    }

    private static String word(Verdict verdict) {
        return verdict.measured() == null ? null : verdict.measured().word();
    }

    private static double measured(Verdict verdict) {
        return verdict.measured() == null ? Double.NaN : verdict.measured().number();
    }

    private static double limit(Verdict verdict) {
        return verdict.limit() == null ? Double.NaN : verdict.limit().value();
    }

    private static boolean differ(double one, double other) {
        return Double.isNaN(one) != Double.isNaN(other) || Math.abs(one - other) > ROUNDING * Math.max(Math.abs(one), Math.abs(other));
    }
}
