package bayproof.judge;

import bayproof.demand.Demand;
import bayproof.demand.Limit;
import bayproof.demand.Outcome;
import bayproof.demand.Weight;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Window;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;

/**
 * The outcome of one rule on one subject.
 *
 * @param rule     the rule
 * @param subject  path of the subject
 * @param outcome  the outcome
 * @param weight   of a broken one what it means, otherwise the heaviest the rule can give here
 * @param measured the value that was held against a limit; null where there is none
 * @param limit    the limit it was held against; null where there is none
 * @param reason   writes {@link #because()}; most verdicts are never printed
 * @param needs    what is missing
 * @param windows  what is assumed
 * @param ways     how to put it right
 * @param mark     writes a short mark of the facts it rests on, the number beside its limit left out
 * @param at       where the subject stands
 */
public record Verdict(RuleInfo rule, String subject, Outcome outcome, Weight weight, Measured measured, Bounded limit,
                      Supplier<String> reason, List<Need> needs, List<Window> windows, List<Demand.Way> ways,
                      Supplier<String> mark, At at)
        implements Comparable<Verdict> {

    /**
     * A value as found.
     *
     * @param number the number, SI; NaN for a word
     * @param unit   SI unit symbol; null for a word
     * @param word   the word; null for a number
     */
    public record Measured(double number, String unit, String word) {
        public static Measured of(double number, String unit) {
            return new Measured(number, unit, null);
        }

        public static Measured of(String word) {
            return new Measured(Double.NaN, null, word);
        }
    }

    /**
     * The limit in force for this verdict.
     *
     * @param limit the limit; a figure of the equipment has one made for it
     * @param sense at-most and so on, as a word
     * @param value the figure that has to be met; for between its lower end
     * @param upper the upper end of a between; NaN otherwise
     * @param next  the next heavier figure not yet crossed; NaN where there is none
     */
    public record Bounded(Limit limit, String sense, double value, double upper, double next) {
    }

    private static final Comparator<Verdict> ORDER = Comparator.<Verdict, Weight>comparing(Verdict::weight).reversed()
            .thenComparing(verdict -> verdict.rule().id()).thenComparing(Verdict::subject);

    public Verdict {
        needs = List.copyOf(needs);
        windows = List.copyOf(windows);
        ways = List.copyOf(ways);
    }

    /** The reason as a sentence without a period. */
    public String because() {
        return reason.get();
    }

    /** Signed distance to the limit in the safe direction, SI; NaN where there is none. */
    public double margin() {
        return measured == null || measured.word() != null ? Double.NaN : margin(measured.number());
    }

    /** The distance that another number would have; NaN where there is no limit for numbers. */
    public double margin(double number) {
        if (limit == null || Double.isNaN(limit.value())) {
            return Double.NaN;
        }
        return switch (limit.sense()) {
            case "at-most" -> limit.value() - number;
            case "at-least" -> number - limit.value();
            case "between" -> Math.min(number - limit.value(), limit.upper() - number);
            default -> Double.NaN;
        };
    }

    /** The margin as a share of the limit; NaN where the limit is 0 or there is no margin. */
    public double marginFraction() {
        double base = limit == null ? 0 : Math.abs("between".equals(limit.sense()) ? limit.upper() : limit.value());
        return base > 0 ? margin() / base : Double.NaN;
    }

    /** A name that is unique within one judgment. */
    public String key() {
        return rule.id() + " " + subject;
    }

    /** Sorted by weight, rule and subject. */
    @Override
    public int compareTo(Verdict other) {
        return ORDER.compare(this, other);
    }
}
