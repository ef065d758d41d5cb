package bayproof.review;

import bayproof.judge.Verdict;
import bayproof.units.Dimension;
import bayproof.units.Quantity;
import bayproof.units.UnitException;
import bayproof.units.UnitSystem;
import bayproof.units.Units;

/** The value and the limit of a verdict as a waiver writes them: rounded as they are printed, in metric units. */
public final class AcceptedValue {
    private AcceptedValue() {
    }

    /** The value; null where the verdict has no number. */
    public static String of(Verdict verdict) {
        return verdict.measured() == null || verdict.measured().word() != null ? null
                : print(verdict.measured().number(), verdict.measured().unit());
    }

    /** The limit; null where the verdict has none that is a number. */
    public static String limit(Verdict verdict) {
        Verdict.Bounded bounded = verdict.limit();
        if (bounded == null || Double.isNaN(bounded.value()) || verdict.measured() == null) {
            return null;
        }
        String unit = bounded.limit().unit();
        return print(bounded.value(), unit) + (Double.isNaN(bounded.upper()) ? "" : " to " + print(bounded.upper(), unit));
    }

    private static String print(double si, String unit) {
        try (UnitSystem.Scope metric = UnitSystem.METRIC.open()) {
            return Units.print(si, Dimension.ofSymbol(unit));
        }
    }

    /** Whether a value lies further beyond the limit than the one that was accepted; one that prints the same does not. */
    static boolean isWorse(Verdict verdict, String accepted) {
        try {
            Quantity quantity = Units.parse(accepted);
            if (!quantity.dimension().symbol().equals(verdict.measured().unit())) {
                return true;
            }
            return verdict.margin() < verdict.margin(quantity.si()) && !print(quantity.si(), verdict.measured().unit()).equals(of(verdict));
        } catch (UnitException e) {
            return true;
        }
    }

    /** Whether two limits are the same figures, however they are spelled. */
    static boolean sameText(String printed, String written) {
        String[] one = printed.split(" to ");
        String[] other = written.split(" to ");
        boolean same = one.length == other.length;
        for (int i = 0; same && i < one.length; i++) {
            same = one[i].equals(normal(other[i].strip()));
        }
        return same;
    }

    private static String normal(String written) {
        try {
            Quantity quantity = Units.parse(written);
            return print(quantity.si(), quantity.dimension().symbol());
        } catch (UnitException e) {
            return written;
        }
    }
}
