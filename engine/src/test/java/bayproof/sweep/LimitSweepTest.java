package bayproof.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.demand.Limit;
import bayproof.demand.Limits;
import bayproof.demand.Outcome;
import bayproof.judge.Card;
import bayproof.judge.Court;
import bayproof.judge.Judgment;
import bayproof.judge.Verdict;
import bayproof.read.JobFiles;
import bayproof.read.UnusableInput;
import bayproof.review.Evaluation;
import bayproof.support.Jobs;
import bayproof.support.Tally;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Shown;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * Each number is really held against its limit: with the limit a thousandth to the bad side of the measured value the
 * rule is broken, a thousandth to the good side it holds.
 */
class LimitSweepTest {
    private static final double A_THOUSANDTH = 0.001;

    private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
    private final LongAdder moved = new LongAdder();
    /** By job and figure: what is held against what with that figure doubled, by verdict. */
    private final Map<String, Map<String, Held>> doubled = new ConcurrentHashMap<>();

    @Test
    void eachLimitDecidesJustWhereItStands() {
        for (String job : Jobs.CLEAN) {
            Evaluation base = Jobs.asWritten(job);
            base.judgment().verdicts().parallelStream().filter(verdict -> !Double.isNaN(verdict.margin())).forEach(verdict -> {
                if (base.job().limits().has(verdict.limit().limit().name())) {
                    named(base, verdict);
                } else {
                    own(job, base, verdict);
                }
            });
        }
        assertTrue(moved.sum() > 0);
        Tally.count("sweep mutations", moved.sum());
        assertEquals(List.of(), wrong.stream().sorted().toList());
    }

    private static double distance(Verdict verdict) {
        double measured = Math.abs(verdict.measured().number());
        return A_THOUSANDTH * (measured > 0 ? measured : Math.abs(verdict.limit().value()));
    }

    // a limit of the trade

    private void named(Evaluation base, Verdict verdict) {
        double value = verdict.measured().number();
        double off = distance(verdict);
        Limit limit = verdict.limit().limit();
        double good = goodEnd(base, verdict);
        // Where the value is a window, the limit between its ends leaves the question open.
        Outcome atBadEnd = good == value ? Outcome.BROKEN : Outcome.UNSHOWN;
        switch (limit.kind()) {
            case AT_MOST -> {
                expect(base, verdict, stepped(limit, value - off), atBadEnd);
                expect(base, verdict, stepped(limit, value + off), Outcome.HOLDS);
                expect(base, verdict, stepped(limit, good - off), Outcome.BROKEN);
            }
            case AT_LEAST -> {
                expect(base, verdict, stepped(limit, value + off), atBadEnd);
                expect(base, verdict, stepped(limit, value - off), Outcome.HOLDS);
                expect(base, verdict, stepped(limit, good + off), Outcome.BROKEN);
            }
            default -> {
                expect(base, verdict, limit.withEnds(value + off, Double.MAX_VALUE), Outcome.BROKEN);
                expect(base, verdict, limit.withEnds(-Double.MAX_VALUE, value - off), Outcome.BROKEN);
                expect(base, verdict, limit.withEnds(value - off, value + off), Outcome.HOLDS);
            }
        }
    }

    private static Limit stepped(Limit limit, double value) {
        return limit.withSteps(limit.steps().stream().map(step -> new Limit.Step(step.weight(), value)).toList());
    }

    private void expect(Evaluation base, Verdict verdict, Limit limit, Outcome outcome) {
        Limits limits = base.job().limits().with(limit);
        if (outcome == Outcome.BROKEN && found(Court.judge(base.facts(), limits), verdict) == Outcome.UNSHOWN) {
            // A fact nobody gave chooses between limits: it takes both of them to break the rule.
            for (String name : Card.of(verdict.rule()).limits()) {
                Limit other = base.job().limits().named(name);
                if (other.kind() == limit.kind() && other.unit().equals(limit.unit())) {
                    limits = limits.with(stepped(other, limit.steps().get(0).value()));
                }
            }
        }
        String figures = limit.steps().isEmpty() ? limit.low() + " to " + limit.high() : limit.steps().get(0).value() + " " + limit.unit();
        expect(Court.judge(base.facts(), limits), verdict, outcome, "its limit at " + figures);
    }

    private void expect(Judgment changed, Verdict verdict, Outcome outcome, String how) {
        if (changed == null) {
            return;
        }
        moved.increment();
        Outcome found = found(changed, verdict);
        if (found != outcome) {
            wrong.add(verdict.key() + " with " + how + ": " + found.word() + ", not " + outcome.word());
        }
    }

    private static Outcome found(Judgment changed, Verdict verdict) {
        return changed.verdicts().stream().filter(one -> one.key().equals(verdict.key())).findFirst().orElseThrow().outcome();
    }

    /** The good end of the window that was judged; the measured value itself where nothing was assumed. */
    private static double goodEnd(Evaluation base, Verdict verdict) {
        for (Fact fact : base.facts().facts()) {
            if (fact.subject().equals(verdict.subject())) {
                for (RecordComponent component : fact.getClass().getRecordComponents()) {
                    try {
                        if (component.getAccessor().invoke(fact) instanceof Shown.Assumed<?> assumed && assumed.bad() instanceof Double bad
                                && bad == verdict.measured().number()) {
                            return (Double) assumed.good();
                        }
                    } catch (ReflectiveOperationException e) {
                        throw new IllegalStateException(e);
                    }
                }
            }
        }
        return verdict.measured().number();
    }

    // a figure of the equipment: found by what moves it

    /** Steps toward a limit: most go with a power of the figure and need two, sums need some more. */
    private static final int MOST_STEPS = 30;
    private static final double MET = 1e-6;

    /**
     * A figure that moves a limit.
     *
     * @param doubled the limit with the figure doubled
     */
    private record Source(Spot spot, double doubled) {
    }

    /** What a verdict holds against what. */
    private record Held(double measured, double limit) {
    }

    private void own(String job, Evaluation base, Verdict verdict) {
        Source source = source(job, base, verdict);
        if (source == null && base.job().limits().all().stream().anyMatch(limit -> limit.kind() == Limit.Kind.VALUE && isSame(limit.value(), verdict.limit().value()))) {
            // It stands in a table, such as the heat of a kind of zone: no file of the job says it, and the cases of the rule do.
            return;
        }
        if (source == null) {
            wrong.add(verdict.key() + ": nothing in the files moves its limit alone, " + verdict.limit().limit().name());
            return;
        }
        double bad = "at-least".equals(verdict.limit().sense()) ? 1 + A_THOUSANDTH : 1 - A_THOUSANDTH;
        // Where the value is a window, the limit between its ends leaves the question open.
        Outcome atBadEnd = goodEnd(base, verdict) == verdict.measured().number() ? Outcome.BROKEN : Outcome.UNSHOWN;
        for (double side : new double[] {bad, 2 - bad}) {
            double measured = verdict.measured().number();
            expect(limitAt(base, verdict, source, measured + (side - 1) * Math.abs(measured)), verdict, side == bad ? atBadEnd : Outcome.HOLDS,
                    source.spot() + " that puts its limit at the measured value times " + side);
        }
    }

    /** The judgment with a figure changed until the limit stands at a value; null where another part of the demand is broken before. */
    private static Judgment limitAt(Evaluation base, Verdict verdict, Source source, double wanted) {
        double last = 0;
        double limitAtLast = verdict.limit().value();
        double power = 1;
        double limit = source.doubled();
        for (int step = 0; step < MOST_STEPS; step++) {
            double next = power + (power - last) * (scale(wanted, wanted) - scale(limit, wanted)) / (scale(limit, wanted) - scale(limitAtLast, wanted));
            last = power;
            limitAtLast = limit;
            power = next;
            Judgment changed = judged(base, source.spot(), Math.pow(2, power));
            Verdict now = changed.verdicts().stream().filter(one -> one.key().equals(verdict.key())).findFirst().orElseThrow();
            if (now.limit() == null || !now.limit().limit().name().equals(verdict.limit().limit().name())) {
                return null;
            }
            limit = now.limit().value();
            if (Math.abs(limit - wanted) <= MET * Math.abs(wanted)) {
                return changed;
            }
        }
        throw new AssertionError(source.spot() + " does not bring the limit of " + verdict.key() + " to " + wanted);
    }

    /** Limits that are levels go with the logarithm of a figure as they are, all others with its powers. */
    private static double scale(double limit, double wanted) {
        return limit > 0 && wanted > 0 ? Math.log(limit) : limit;
    }

    /** Figures that say the same as the limit are tried first; only if none of them moves it are all the others. */
    private Source source(String job, Evaluation base, Verdict verdict) {
        Source same = source(job, base, verdict, text -> saysTheSame(text, verdict.limit().value()));
        return same != null ? same : source(job, base, verdict, LimitSweepTest::isQuantity);
    }

    private Source source(String job, Evaluation base, Verdict verdict, Predicate<String> candidate) {
        for (String kind : List.of("parts", "vehicle", "plan")) {
            for (Spot spot : Spot.all(base.files(), kind)) {
                String text = spot.text(base.files());
                if (text != null && candidate.test(text)) {
                    Held held = doubled.computeIfAbsent(job + " " + spot, any -> held(base, spot)).get(verdict.key());
                    if (held != null && isSame(held.measured(), verdict.measured().number()) && !isSame(held.limit(), verdict.limit().value())) {
                        return new Source(spot, held.limit());
                    }
                }
            }
        }
        return null;
    }

    private static boolean isSame(double one, double other) {
        return Math.abs(one - other) <= 1e-9 * Math.abs(other);
    }

    /** What each verdict holds against what with a figure doubled; nothing where twice the figure cannot be. */
    private static Map<String, Held> held(Evaluation base, Spot spot) {
        Map<String, Held> held = new HashMap<>();
        try {
            for (Verdict verdict : Evaluation.of(scaled(base, spot, 2)).judgment().verdicts()) {
                if (!Double.isNaN(verdict.margin())) {
                    held.put(verdict.key(), new Held(verdict.measured().number(), verdict.limit().value()));
                }
            }
        } catch (UnusableInput e) {
            // Then it is not the figure looked for.
        }
        return held;
    }

    private static boolean saysTheSame(String text, double value) {
        try {
            return isSame(Units.parse(text).si(), value);
        } catch (UnitException e) {
            return false;
        }
    }

    private static boolean isQuantity(String text) {
        try {
            Units.parse(text);
            return true;
        } catch (UnitException e) {
            return false;
        }
    }

    private static Judgment judged(Evaluation base, Spot spot, double factor) {
        try {
            return Evaluation.of(scaled(base, spot, factor)).judgment();
        } catch (UnusableInput e) {
            throw new AssertionError(spot + " times " + factor + ":\n" + e.getMessage(), e);
        }
    }

    private static JobFiles scaled(Evaluation base, Spot spot, double factor) {
        String text = spot.text(base.files());
        String number = text.replaceFirst("(?<=[0-9])[^0-9.].*", "");
        String other = new BigDecimal(number).multiply(BigDecimal.valueOf(factor), MathContext.DECIMAL32).toPlainString();
        return spot.saying(base.files(), other + text.substring(number.length()));
    }
}
