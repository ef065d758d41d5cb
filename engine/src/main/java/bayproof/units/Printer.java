package bayproof.units;

import bayproof.units.UnitTable.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Prints quantities in the units and with the digits the trade reads; the choices are common practice, no source. */
final class Printer {
    /** Beyond these, a digit of the smallest unit of a dimension says nothing in this trade. */
    private static final int MOST_DECIMALS = 3;

    /**
     * One way to print a dimension.
     *
     * @param unit     the unit
     * @param from     least number of the unit; less is printed in the next smaller unit
     * @param digits   significant digits, as far as they lie behind the decimal point: whole digits are never lost
     * @param decimals fixed decimals instead; -1 for none
     */
    private record Style(Unit unit, BigDecimal from, int digits, int decimals) {

        boolean fits(BigDecimal si) {
            return si.abs().compareTo(from.multiply(unit.factor())) >= 0;
        }

        /** The number to print. */
        BigDecimal round(BigDecimal si) {
            BigDecimal number = si.divide(unit.factor(), MathContext.DECIMAL128).add(unit.zero());
            if (decimals >= 0) {
                return number.setScale(decimals, RoundingMode.HALF_UP);
            }
            // Rounded to its digits first: 9.996 has one whole digit, and what it prints as has two.
            BigDecimal significant = number.round(new MathContext(digits, RoundingMode.HALF_UP));
            int wholeDigits = significant.precision() - significant.scale();
            int kept = Math.max(0, Math.min(MOST_DECIMALS, digits - wholeDigits));
            BigDecimal rounded = number.setScale(kept, RoundingMode.HALF_UP);
            return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.scale() > 0 ? withoutEndZeros(rounded) : rounded;
        }

        private static BigDecimal withoutEndZeros(BigDecimal number) {
            BigDecimal stripped = number.stripTrailingZeros();
            return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
        }
    }

    /** Largest unit first. */
    private static final Map<Dimension, List<Style>> STYLES = new EnumMap<>(Dimension.class);
    /** What is printed otherwise in the United States. */
    private static final Map<Dimension, List<Style>> US = new EnumMap<>(Dimension.class);

    static {
        STYLES.put(Dimension.LENGTH, List.of(new Style(UnitTable.find("m"), BigDecimal.ONE, 0, 2), style("mm", "0", 3)));
        STYLES.put(Dimension.AREA, List.of(style("m2", "1", 3), style("cm2", "1", 3), style("mm2", "0", 3)));
        STYLES.put(Dimension.VOLUME, List.of(style("L", "0.1", 3), style("mL", "0", 3)));
        STYLES.put(Dimension.MASS, List.of(style("kg", "1", 3), style("g", "0", 3)));
        STYLES.put(Dimension.TIME, List.of(style("h", "2", 3), style("min", "2", 3), style("s", "1", 3), style("ms", "0", 3)));
        STYLES.put(Dimension.FREQUENCY, List.of(style("MHz", "1", 4), style("kHz", "1", 3), style("Hz", "0", 3)));
        STYLES.put(Dimension.CURRENT, List.of(style("A", "1", 3), style("mA", "0", 3)));
        STYLES.put(Dimension.VOLTAGE, List.of(style("V", "0.1", 4), style("mV", "0", 3)));
        STYLES.put(Dimension.RESISTANCE, List.of(style("kohm", "1", 3), style("ohm", "0.1", 3), style("mohm", "0", 3)));
        STYLES.put(Dimension.POWER, List.of(style("W", "1", 3), style("mW", "0", 3)));
        STYLES.put(Dimension.CAPACITANCE, List.of(style("uF", "0", 3)));
        STYLES.put(Dimension.INDUCTANCE, List.of(style("mH", "0.1", 3), style("uH", "0", 3)));
        STYLES.put(Dimension.CHARGE, List.of(style("Ah", "1", 3), style("mAh", "0", 3)));
        STYLES.put(Dimension.SPEED, List.of(style("m/s", "0", 3)));
        STYLES.put(Dimension.FORCE, List.of(style("kN", "1", 3), style("N", "0", 3)));
        STYLES.put(Dimension.TORQUE, List.of(style("N m", "0", 3)));
        STYLES.put(Dimension.TEMPERATURE, List.of(style("°C", "0", 3)));
        STYLES.put(Dimension.LEVEL, List.of(style("dB", "0", 3)));
        STYLES.put(Dimension.RATIO, List.of(style("%", "0", 3)));
        US.put(Dimension.LENGTH, List.of(new Style(UnitTable.find("ft"), new BigDecimal("6"), 0, 2), style("in", "0", 3)));
        US.put(Dimension.AREA, List.of(style("ft2", "1", 3), style("in2", "0", 3)));
        US.put(Dimension.VOLUME, List.of(style("ft3", "0.1", 3), style("in3", "0", 3)));
        US.put(Dimension.MASS, List.of(style("lb", "1", 3), style("oz", "0", 3)));
        US.put(Dimension.SPEED, List.of(style("ft/s", "0", 3)));
        US.put(Dimension.TORQUE, List.of(style("ft-lb", "10", 3), style("in-lb", "0", 3)));
        US.put(Dimension.TEMPERATURE, List.of(style("°F", "0", 3)));
    }

    private Printer() {
    }

    private static Style style(String unit, String from, int digits) {
        return new Style(UnitTable.find(unit), new BigDecimal(from), digits, -1);
    }

    static String print(Quantity quantity) {
        List<Style> styles = styles(quantity.dimension());
        if (quantity.si() == 0 && quantity.dimension() != Dimension.TEMPERATURE) {
            return "0 " + plain(styles).unit().symbol();
        }
        BigDecimal si = new BigDecimal(Double.toString(quantity.si()));
        Style style = choose(styles, si);
        BigDecimal printed = style.round(si);
        // Rounding can reach the next larger unit: 999.6 mm is printed as 1.00 m.
        Style larger = styles.size() == 1 ? style : choose(styles, printed.multiply(style.unit().factor()));
        if (larger.unit().factor().compareTo(style.unit().factor()) > 0) {
            return text(larger.round(printed.multiply(style.unit().factor())), larger);
        }
        return text(printed, style);
    }

    private static List<Style> styles(Dimension dimension) {
        List<Style> usual = STYLES.get(dimension);
        return UnitSystem.current() == UnitSystem.US ? US.getOrDefault(dimension, usual) : usual;
    }

    /** A difference of two temperatures: a degree is a degree wherever the scale begins. */
    static String printDegrees(double celsius) {
        Style style = styles(Dimension.TEMPERATURE).get(0);
        Unit unit = style.unit();
        Style degrees = new Style(new Unit(unit.symbol(), unit.dimension(), unit.factor(), BigDecimal.ZERO), style.from(), style.digits(), -1);
        return text(degrees.round(new BigDecimal(Double.toString(celsius))), degrees);
    }

    private static Style choose(List<Style> styles, BigDecimal si) {
        return styles.stream().filter(style -> style.fits(si)).findFirst().orElse(styles.get(styles.size() - 1));
    }

    /** The style of the unit that values are kept in, else the smallest. */
    private static Style plain(List<Style> styles) {
        return styles.stream().filter(style -> style.unit().factor().compareTo(BigDecimal.ONE) == 0).findFirst()
                .orElse(styles.get(styles.size() - 1));
    }

    private static String text(BigDecimal number, Style style) {
        return number.toPlainString() + " " + style.unit().symbol();
    }
}
