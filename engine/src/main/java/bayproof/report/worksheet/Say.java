package bayproof.report.worksheet;

import bayproof.units.Dimension;
import bayproof.units.UnitSystem;
import bayproof.units.Units;
import bayproof.vocabulary.Shown;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Every value of a sheet as people read it; what nobody gave is a blank. The one place that chooses units. */
public final class Say {
    private static final double SECONDS_PER_HOUR = 3600;
    /** International yard and pound agreement of 1959. */
    private static final double METRES_PER_INCH = 0.0254;

    private Say() {
    }

    public static String text(Shown<String> text) {
        return text.orElse(Block.BLANK);
    }

    public static String amount(Shown<Double> value, Dimension dimension) {
        return value.map(si -> Units.print(si, dimension)).orElse(Block.BLANK);
    }

    public static String amount(double si, Dimension dimension) {
        return Units.print(si, dimension);
    }

    /** A length to cut, always in the same unit: nobody converts with a blade in his hand. */
    public static String cut(Shown<Double> metres) {
        return metres.map(Say::cut).orElse(Block.BLANK);
    }

    private static String cut(double metres) {
        return UnitSystem.current() == UnitSystem.US ? BigDecimal.valueOf(metres / METRES_PER_INCH).setScale(1, RoundingMode.HALF_UP).toPlainString() + " in"
                : BigDecimal.valueOf(metres).setScale(2, RoundingMode.HALF_UP).toPlainString() + " m";
    }

    /** Hours, never minutes: the column is added up by hand. */
    public static String hours(Shown<Double> seconds) {
        return seconds.map(Say::hours).orElse(Block.BLANK);
    }

    public static String hours(double seconds) {
        return BigDecimal.valueOf(seconds / SECONDS_PER_HOUR).setScale(2, RoundingMode.HALF_UP).toPlainString() + " h";
    }

    /** Names in a sentence; nothing is a dash. */
    public static String list(List<String> names) {
        return names.isEmpty() ? "-" : String.join(", ", names);
    }

    /** Names in a sentence, the first few of many. */
    public static String list(List<String> names, int most) {
        return names.size() <= most ? list(names) : list(names.subList(0, most)) + " and " + (names.size() - most) + " more";
    }
}
