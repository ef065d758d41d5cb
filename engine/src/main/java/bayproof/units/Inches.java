package bayproof.units;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths as a tape measure in inches gives them: fractions down to sixty-fourths, feet with inches. */
final class Inches {
    private static final String INCH = "(?:inches|inch|in\\.?|\"|''|″|′′|”)";
    /** Every form of a length in feet or inches has one of these. */
    private static final String MARKS = "iIfF\"'″′”’";
    private static final String FRACTION = "([0-9]{1,2})/(2|4|8|16|32|64)";
    private static final Pattern FRACTIONAL = Pattern.compile("(?i)(?:([0-9]{1,3})(?:\\s+|-))?" + FRACTION + "\\s*" + INCH);
    private static final Pattern FEET = Pattern.compile(
            "(?i)([0-9]{1,3})\\s*(?:ft\\.?|feet|foot|'|′|’)\\s*-?\\s*(?:([0-9]{1,2}(?:\\.[0-9]+)?)|([0-9]{1,2})\\s+" + FRACTION + ")\\s*" + INCH);
    private static final BigDecimal METRES = new BigDecimal("0.0254");
    private static final BigDecimal FOOT = new BigDecimal("12");

    private Inches() {
    }

    /** The length, or null where the text is none of these forms. */
    static Quantity parse(String clean) {
        if (clean.chars().noneMatch(letter -> MARKS.indexOf(letter) >= 0)) {
            return null;
        }
        Matcher fractional = FRACTIONAL.matcher(clean);
        if (fractional.matches()) {
            return quantity(number(fractional.group(1)), fractional.group(2), fractional.group(3));
        }
        Matcher feet = FEET.matcher(clean);
        if (!feet.matches()) {
            return null;
        }
        BigDecimal inches = number(feet.group(2) == null ? feet.group(3) : feet.group(2));
        return inches.compareTo(FOOT) >= 0 ? null : quantity(number(feet.group(1)).multiply(FOOT).add(inches), feet.group(4), feet.group(5));
    }

    private static BigDecimal number(String digits) {
        return digits == null ? BigDecimal.ZERO : new BigDecimal(digits);
    }

    /** A proper fraction is exact: every power of two divides a power of ten. */
    private static Quantity quantity(BigDecimal whole, String above, String below) {
        BigDecimal inches = whole;
        if (above != null) {
            if (Integer.parseInt(above) >= Integer.parseInt(below)) {
                return null;
            }
            inches = whole.add(new BigDecimal(above).divide(new BigDecimal(below)));
        }
        return new Quantity(inches.multiply(METRES).doubleValue(), Dimension.LENGTH);
    }
}
