package bayproof.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * The units of the trade, with exact factors.
 *
 * <p>Inch, foot and pound: the international yard and pound agreement of 1959 (inch = 0.0254 m, pound = 0.45359237 kg),
 * as in NIST SP 811 (2008), appendix B. The pound-force in torque takes standard gravity, 9.80665 m/s2 (same appendix).
 * Degree Fahrenheit: t/degC = (t/degF - 32)/1.8 (NIST SP 811, B.8). Liter, minute, hour, day: NIST SP 811, table 6.
 * The prefixes: NIST SP 811, table 5.
 */
final class UnitTable {

    /**
     * A unit.
     *
     * @param symbol    how it is printed; always one of the spellings that are read
     * @param dimension what it measures
     * @param factor    SI value of one unit
     * @param zero      the unit's reading at SI zero; not zero for degrees Fahrenheit only
     */
    record Unit(String symbol, Dimension dimension, BigDecimal factor, BigDecimal zero) {

        /** The SI value nearest to a number of these units. */
        double toSi(BigDecimal number) {
            return number.subtract(zero).multiply(factor).doubleValue();
        }
    }

    private static final Map<String, Unit> EXACT = new HashMap<>();
    private static final Map<String, Unit> FOLDED = new HashMap<>();

    /** In these, a capital letter changes the meaning (milli or mega, gram or gravity, hour or henry). */
    private static final Set<String> CASE_MATTERS = Set.of("m", "g", "h", "ma", "mah", "mv", "mw", "mohm", "mohms", "mω", "mhz", "mh");

    static {
        add(Dimension.LENGTH, "0.001", "mm", "millimeter", "millimeters", "millimetre", "millimetres");
        add(Dimension.LENGTH, "0.01", "cm", "centimeter", "centimeters", "centimetre", "centimetres");
        add(Dimension.LENGTH, "1", "m", "meter", "meters", "metre", "metres");
        add(Dimension.LENGTH, "0.0254", "in", "in.", "inch", "inches", "\"", "''", "″", "′′", "”");
        add(Dimension.LENGTH, "0.3048", "ft", "ft.", "foot", "feet", "'", "′", "’");
        add(Dimension.AREA, "0.000001", "mm2", "mm^2", "sq mm", "square millimeter", "square millimeters");
        add(Dimension.AREA, "0.0001", "cm2", "cm^2", "sq cm");
        add(Dimension.AREA, "1", "m2", "m^2", "sq m");
        add(Dimension.AREA, "0.00064516", "in2", "in^2", "sq in", "square inch", "square inches");
        add(Dimension.AREA, "0.09290304", "ft2", "ft^2", "sq ft");
        add(Dimension.VOLUME, "0.001", "L", "l", "liter", "liters", "litre", "litres", "dm3", "dm^3");
        add(Dimension.VOLUME, "0.000001", "mL", "ml", "cm3", "cm^3", "cc");
        add(Dimension.VOLUME, "1", "m3", "m^3", "cu m");
        add(Dimension.VOLUME, "0.000016387064", "in3", "in^3", "cu in", "cubic inch", "cubic inches");
        add(Dimension.VOLUME, "0.028316846592", "ft3", "ft^3", "cu ft", "cubic foot", "cubic feet");
        add(Dimension.SPEED, "1", "m/s");
        add(Dimension.SPEED, "0.3048", "ft/s");
        add(Dimension.FORCE, "1", "N", "newton", "newtons");
        add(Dimension.FORCE, "1000", "kN");
        add(Dimension.MASS, "1", "kg", "kilogram", "kilograms");
        add(Dimension.MASS, "0.001", "g", "gram", "grams");
        add(Dimension.MASS, "0.45359237", "lb", "lb.", "lbs", "pound", "pounds");
        add(Dimension.MASS, "0.028349523125", "oz", "ounce", "ounces");
        add(Dimension.TIME, "0.001", "ms", "millisecond", "milliseconds");
        add(Dimension.TIME, "1", "s", "sec", "second", "seconds");
        add(Dimension.TIME, "60", "min", "minute", "minutes");
        add(Dimension.TIME, "3600", "h", "hr", "hrs", "hour", "hours");
        add(Dimension.TIME, "86400", "d", "day", "days");
        add(Dimension.FREQUENCY, "1", "Hz", "hertz");
        add(Dimension.FREQUENCY, "1000", "kHz", "kilohertz");
        add(Dimension.FREQUENCY, "1000000", "MHz", "megahertz");
        add(Dimension.CURRENT, "1", "A", "amp", "amps", "ampere", "amperes", "A DC");
        add(Dimension.CURRENT, "0.001", "mA", "milliamp", "milliamps", "milliampere", "milliamperes");
        add(Dimension.VOLTAGE, "1", "V", "volt", "volts", "V DC", "VDC", "volts DC");
        add(Dimension.VOLTAGE, "0.001", "mV", "millivolt", "millivolts");
        add(Dimension.RESISTANCE, "1", "ohm", "ohms", "Ω");
        add(Dimension.RESISTANCE, "0.001", "mohm", "mohms", "mOhm", "mOhms", "milliohm", "milliohms", "mΩ");
        add(Dimension.RESISTANCE, "1000", "kohm", "kohms", "kilohm", "kilohms", "kΩ");
        add(Dimension.POWER, "1", "W", "watt", "watts");
        add(Dimension.POWER, "0.001", "mW", "milliwatt", "milliwatts");
        add(Dimension.POWER, "1000", "kW", "kilowatt", "kilowatts");
        add(Dimension.CAPACITANCE, "0.000001", "uF", "\u03bcF", "microfarad", "microfarads");
        add(Dimension.CAPACITANCE, "0.000000001", "nF", "nanofarad", "nanofarads");
        add(Dimension.INDUCTANCE, "0.001", "mH", "millihenry", "millihenries", "millihenrys");
        add(Dimension.INDUCTANCE, "0.000001", "uH", "\u03bcH", "microhenry", "microhenries", "microhenrys");
        add(Dimension.CHARGE, "3600", "Ah", "amp-hour", "amp-hours", "amp hour", "amp hours", "ampere hour", "ampere hours");
        add(Dimension.CHARGE, "3.6", "mAh");
        add(Dimension.TORQUE, "1", "N m", "Nm", "N-m", "N·m", "N⋅m");
        add(Dimension.TORQUE, "0.1129848290276167", "in-lb", "in lb", "in-lbs", "in-lbf", "in lbf", "lb-in", "lbf-in", "lbf in");
        add(Dimension.TORQUE, "1.3558179483314004", "ft-lb", "ft lb", "ft-lbs", "ft-lbf", "ft lbf", "lb-ft", "lbf-ft", "lbf ft");
        add(Dimension.TEMPERATURE, "1", "°C", "° C", "ºC", "degC", "deg C", "C", "celsius", "degrees C", "degrees celsius");
        add(new Unit("°F", Dimension.TEMPERATURE, BigDecimal.ONE.divide(new BigDecimal("1.8"), MathContext.DECIMAL128),
                new BigDecimal("32")), "° F", "ºF", "degF", "deg F", "fahrenheit", "degrees F", "degrees fahrenheit");
        add(Dimension.LEVEL, "1", "dB", "dBFS", "dBA", "dB(A)");
        add(Dimension.RATIO, "0.01", "%", "percent");
    }

    private UnitTable() {
    }

    private static void add(Dimension dimension, String factor, String symbol, String... otherSpellings) {
        add(new Unit(symbol, dimension, new BigDecimal(factor), BigDecimal.ZERO), otherSpellings);
    }

    private static void add(Unit unit, String... otherSpellings) {
        addSpelling(unit.symbol(), unit);
        for (String spelling : otherSpellings) {
            addSpelling(spelling, unit);
        }
    }

    private static void addSpelling(String spelling, Unit unit) {
        Unit other = FOLDED.put(fold(spelling), unit);
        if (EXACT.put(spelling, unit) != null || other != null && other != unit) {
            throw new IllegalStateException("the unit spelling \"" + spelling + "\" has two meanings");
        }
    }

    private static String fold(String spelling) {
        return spelling.toLowerCase(Locale.ROOT);
    }

    /** The unit of a spelling, or null; capitals are forgiven where they change nothing. */
    static Unit find(String spelling) {
        Unit exact = EXACT.get(spelling);
        return exact != null || differsInCaseOnly(spelling) ? exact : FOLDED.get(fold(spelling));
    }

    /** Whether a spelling is refused only because capitals matter in it. */
    static boolean differsInCaseOnly(String spelling) {
        return !EXACT.containsKey(spelling) && CASE_MATTERS.contains(fold(spelling));
    }

    /** The end of a refusal's sentence: the spelling that may have been meant, or a period where none is near. */
    static String near(String spelling, Dimension expected) {
        String given = fold(spelling);
        int most = given.length() < (expected == null ? 4 : 3) ? 1 : 2;
        if (given.isEmpty() || given.length() > 30) {
            return ".";
        }
        LevenshteinDistance distance = new LevenshteinDistance(most);
        return EXACT.entrySet().stream()
                .filter(entry -> entry.getKey().length() >= 2 && given.charAt(0) == fold(entry.getKey()).charAt(0)
                        && entry.getKey().chars().allMatch(Character::isLetter) && (expected == null || entry.getValue().dimension() == expected))
                .map(Map.Entry::getKey).filter(known -> distance.apply(given, fold(known)) >= 0)
                .min(Comparator.<String, Integer>comparing(known -> distance.apply(given, fold(known))).thenComparing(known -> known))
                .map(known -> "; did you mean " + known + "?").orElse(".");
    }

    /** All spellings that are read, in no order. */
    static List<String> spellings() {
        return List.copyOf(EXACT.keySet());
    }
}
