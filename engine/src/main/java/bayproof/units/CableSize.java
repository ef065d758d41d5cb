package bayproof.units;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of cable sizes: American wire gauge (ASTM B258) and cross sections in square millimeters (IEC 60228). */
final class CableSize {
    static final String FIX = "Write a gauge as \"4 AWG\" (also \"4AWG\", \"4 ga\", \"1/0\", \"0 AWG\" for 1/0)"
            + " or a cross section as \"25 mm2\" (also \"25 mm²\").";

    private static final String GAUGE = "\\s*-?(?:AWG|GA\\.?|GAUGE|GAGE)";
    private static final Pattern GAUGE_FIRST = Pattern.compile("(?:AWG|GAUGE|GA\\.?)\\s*#?\\s*([0-9]{1,2}(?:/0)?)", Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE = Pattern.compile("#?\\s*[0-9]{1,4}(?:\\.[0-9]{1,3})?");
    private static final Pattern ACROSS = Pattern.compile("[0-9.]+\\s*(?:mm|in|in\\.|\"|inch|inches)", Pattern.CASE_INSENSITIVE);
    private static final Pattern NUMBERED = Pattern.compile("([1-9]|[1-3][0-9]|40)" + GAUGE, Pattern.CASE_INSENSITIVE);
    private static final Pattern ZEROS = Pattern.compile("(0{1,4})" + GAUGE, Pattern.CASE_INSENSITIVE);
    private static final Pattern OVER_ZERO = Pattern.compile("([1-4])/0(?:" + GAUGE + ")?", Pattern.CASE_INSENSITIVE);
    private static final Pattern METRIC = Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,3})?)\\s*(?:mm2|mm\\^2|sq\\.? ?mm|mm sq|square (?:mm|millimeters?|millimetres?))",
            Pattern.CASE_INSENSITIVE);

    private CableSize() {
    }

    static String parse(String clean, String quoted) throws UnitException {
        Matcher gaugeFirst = GAUGE_FIRST.matcher(clean);
        if (gaugeFirst.matches()) {
            return parse(gaugeFirst.group(1) + " AWG", quoted);
        }
        Matcher numbered = NUMBERED.matcher(clean);
        if (numbered.matches()) {
            return numbered.group(1) + " AWG";
        }
        Matcher zeros = ZEROS.matcher(clean);
        if (zeros.matches()) {
            return zeros.group(1).length() + "/0 AWG";
        }
        Matcher overZero = OVER_ZERO.matcher(clean);
        if (overZero.matches()) {
            return overZero.group(1) + "/0 AWG";
        }
        Matcher metric = METRIC.matcher(clean);
        if (metric.matches()) {
            BigDecimal squareMillimeters = new BigDecimal(metric.group(1));
            if (squareMillimeters.signum() > 0) {
                return squareMillimeters.stripTrailingZeros().toPlainString() + " mm2";
            }
        }
        if (BARE.matcher(clean).matches()) {
            throw new UnitException(quoted + " does not say whether it is a gauge or square millimeters.", FIX);
        }
        if (ACROSS.matcher(clean).matches()) {
            throw new UnitException(quoted + " is a length: a cable's diameter does not tell how much metal is in it.", FIX);
        }
        throw new UnitException(quoted + " is not a cable size.", FIX);
    }
}
