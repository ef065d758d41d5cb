package bayproof.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.demand.Limit;
import bayproof.demand.Outcome;
import bayproof.judge.Verdict;
import bayproof.read.JobFiles;
import bayproof.read.SharedTables;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import bayproof.units.UnitException;
import bayproof.units.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * A figure of a job that is moved to the safe side of a rule never turns that rule against the job: a little, or a long way for as
 * long as the measured value goes on getting better.
 */
class SafeDirectionTest {
    /** Of figures that stand at the same key of several things, so many are moved: the first ones by name. */
    private static final int OF_A_KIND = 2;
    private static final double ROUNDING = 1e-9;

    private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
    private final Set<String> rules = ConcurrentHashMap.newKeySet();
    private final LongAdder moved = new LongAdder();
    private final LongAdder tightened = new LongAdder();

    /** The same figure moved a little and a long way to one side. */
    private record Side(String little, String far) {
    }

    @Test
    void theSafeSideOfALimitIsSafeAllTheWay() {
        for (String job : Jobs.CLEAN) {
            Evaluation base = Jobs.asWritten(job);
            spots(base.files()).parallelStream().forEach(spot -> sides(spot.text(base.files())).forEach(side -> move(job, base, spot, side)));
        }
        assertTrue(tightened.sum() > moved.sum() / 10, tightened.sum() + " verdicts tightened by " + moved.sum() + " moves");
        Tally.count("sweep mutations", moved.sum());
        Tally.count("verdicts held against a value on their safe side", tightened.sum());
        Tally.say("rules with a value moved to their safe side: " + rules.size());
        assertEquals(List.of(), wrong.stream().sorted().toList());
    }

    /** The figures to move: of each kind of figure a few. */
    private static List<Spot> spots(JobFiles files) {
        Map<String, List<Spot>> kinds = new LinkedHashMap<>();
        for (String file : List.of("plan", "vehicle")) {
            Spot.all(files, file).stream().filter(spot -> spot.text(files) != null && !sides(spot.text(files)).isEmpty())
                    .sorted((one, other) -> one.toString().compareTo(other.toString())).forEach(spot -> {
                        List<String> steps = spot.steps();
                        String kind = file + "." + steps.get(0) + "." + steps.stream().skip(2).collect(Collectors.joining("."));
                        kinds.computeIfAbsent(kind, any -> new ArrayList<>()).add(spot);
                    });
        }
        return kinds.values().stream().flatMap(all -> all.stream().limit(OF_A_KIND)).toList();
    }

    /** Both sides of a quantity, the thicker side of a cable size; none where the text is no figure. */
    private static List<Side> sides(String text) {
        try {
            List<String> thicker = SharedTables.conductors().larger(Units.parseSize(text)).stream().limit(3).toList();
            return thicker.isEmpty() ? List.of() : List.of(new Side(thicker.get(0), thicker.get(thicker.size() - 1)));
        } catch (UnitException | IllegalArgumentException e) {
            // No size: perhaps a quantity.
        }
        try {
            return Units.parse(text).si() == 0 ? List.of() : List.of(new Side(times(text, "1.1"), times(text, "2")), new Side(times(text, "0.9"), times(text, "0.5")));
        } catch (UnitException e) {
            return List.of();
        }
    }

    private static String times(String text, String factor) {
        String number = text.replaceFirst("(?<=[0-9])[^0-9.].*", "");
        return new BigDecimal(number).multiply(new BigDecimal(factor), MathContext.DECIMAL32).toPlainString() + text.substring(number.length());
    }

    private void move(String job, Evaluation base, Spot spot, Side side) {
        Map<String, Verdict> little = judged(base, spot, side.little());
        List<Verdict> better = base.judgment().verdicts().stream().filter(verdict -> isOneSided(verdict) && isBetter(verdict, little.get(verdict.key()))).toList();
        if (better.isEmpty()) {
            return;
        }
        Map<String, Verdict> far = judged(base, spot, side.far());
        for (Verdict verdict : better) {
            check(job + ": " + spot + " " + side.little(), little.get(verdict.key()));
            Verdict then = far.get(verdict.key());
            // A verdict without a number any more has not got worse by its number: it must hold as well.
            if (then != null && (then.measured() == null || isBetter(verdict, then))) {
                check(job + ": " + spot + " " + side.far(), then);
            }
        }
    }

    private void check(String title, Verdict verdict) {
        tightened.increment();
        rules.add(verdict.rule().id());
        if (verdict.outcome() != Outcome.HOLDS) {
            wrong.add(title + ": " + verdict.key() + " " + verdict.outcome().word() + ": " + verdict.because());
        }
    }

    private static boolean isOneSided(Verdict verdict) {
        return !Double.isNaN(verdict.margin()) && (verdict.limit().limit().kind() == Limit.Kind.AT_MOST || verdict.limit().limit().kind() == Limit.Kind.AT_LEAST);
    }

    /** Whether the measured value went to the safe side, and the limit not the other way. */
    private static boolean isBetter(Verdict before, Verdict after) {
        if (after == null || after.measured() == null || after.limit() == null) {
            return false;
        }
        double side = before.limit().limit().kind() == Limit.Kind.AT_MOST ? -1 : 1;
        double gain = side * (after.measured().number() - before.measured().number());
        double stricter = side * (after.limit().value() - before.limit().value());
        return gain > ROUNDING * Math.abs(before.measured().number()) && stricter <= ROUNDING * Math.abs(before.limit().value());
    }

    /** What is judged with another figure; nothing where that figure cannot be. */
    private Map<String, Verdict> judged(Evaluation base, Spot spot, String text) {
        try {
            Map<String, Verdict> verdicts = Evaluation.of(spot.saying(base.files(), text)).judgment().verdicts().stream()
                    .collect(Collectors.toMap(Verdict::key, verdict -> verdict));
            moved.increment();
            return verdicts;
        } catch (UnusableInput e) {
            return Map.of();
        }
    }
}
