package bayproof.report;

import bayproof.demand.Limit;
import bayproof.judge.Verdict;
import bayproof.read.Sizes;
import bayproof.units.Dimension;
import bayproof.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Numbers and limits as people read them. */
public final class Amounts {
    /** Limits whose figures are differences of two temperatures. */
    private static final Set<String> DIFFERENCES = Set.of("conductor-warming");

    private Amounts() {
    }

    /** The two ends of a window. */
    static String window(Limit limit, double low, double high) {
        return DIFFERENCES.contains(limit.name()) ? difference(low, limit.unit()) + " to " + difference(high, limit.unit())
                : range(low, high, limit.unit());
    }

    private static String difference(double si, String unit) {
        return Units.printDifference(si, Dimension.ofSymbol(unit));
    }

    /** A number with its unit. */
    public static String print(double si, String unit) {
        return Units.print(si, Dimension.ofSymbol(unit));
    }

    public static String print(Verdict.Measured measured) {
        return measured.word() != null ? Sizes.bothWays(measured.word()) : print(measured.number(), measured.unit());
    }

    /** The figure that has to be met, such as "at most 178 mm"; a list of words for a limit on words. */
    public static String bound(Verdict.Bounded bounded) {
        Limit limit = bounded.limit();
        return switch (bounded.sense()) {
            case "at-most" -> "at most " + print(bounded.value(), limit.unit());
            case "at-least" -> "at least " + print(bounded.value(), limit.unit());
            case "between" -> range(bounded.value(), bounded.upper(), limit.unit());
            case "one-of" -> "one of " + String.join(", ", limit.words());
            default -> "none of " + String.join(", ", limit.words());
        };
    }

    static String range(double low, double high, String unit) {
        return print(low, unit) + " to " + print(high, unit);
    }

    /** The whole figure of a limit, with the weight of each step. */
    public static String figure(Limit limit) {
        return switch (limit.kind()) {
            case AT_MOST -> "at most " + steps(limit);
            case AT_LEAST -> "at least " + steps(limit);
            case VALUE -> print(limit.value(), limit.unit());
            case BETWEEN, WINDOW -> window(limit, limit.low(), limit.high());
            case ONE_OF -> "one of " + String.join(", ", limit.words());
            case NONE_OF -> "none of " + String.join(", ", limit.words());
            case WORDS -> String.join(", ", limit.words());
        };
    }

    private static String steps(Limit limit) {
        List<String> steps = new ArrayList<>();
        for (Limit.Step step : limit.steps()) {
            steps.add(print(step.value(), limit.unit()) + (step.weight() == null ? "" : " (else " + step.weight().name() + ")"));
        }
        return String.join(", ", steps);
    }

    /** The distance to the limit, such as "122 mm left, 69 % of the limit"; null where there is none. */
    static String margin(Verdict verdict) {
        double margin = verdict.margin();
        if (Double.isNaN(margin)) {
            return null;
        }
        double fraction = verdict.marginFraction();
        return difference(Math.abs(margin), verdict.limit().limit().unit()) + (margin < 0 ? " past the limit" : " left")
                + (Double.isNaN(fraction) ? "" : ", " + print(Math.abs(fraction), Dimension.RATIO.symbol()) + " of the limit");
    }
}
