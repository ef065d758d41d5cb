package bayproof.units;

import bayproof.units.UnitTable.Unit;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Quantities and cable sizes as people write them: read once at the edge into SI doubles, printed once at the edge in
 * the form the trade reads. Nothing here depends on the machine's language.
 */
public final class Units {
    /** A quantity is a short text; anything longer is a mistake, or somebody trying the reader. */
    private static final int MOST_CHARACTERS = 30;
    private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;

    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)");
    private static final Pattern POWER_OF_TEN = Pattern.compile("[eE][+-]?[0-9].*");
    private static final Pattern FRACTION = Pattern.compile("\\s*/\\s*[0-9].*|\\s+[0-9]+\\s*/.*|⁄.*");
    private static final Pattern COMMA = Pattern.compile("\\s*,.*");
    private static final Pattern FEET_AND_INCHES = Pattern.compile("\\s*(?:'|′|’|ft\\.?|feet)\\s*[0-9.]+\\s*(?:\"|''|″|′′|”|in).*");
    private static final Pattern RATING = Pattern.compile("(?i)\\s*(?:w|kw|watts?)\\s*(?:rms|max|peak|pmpo|continuous).*");
    private static final Pattern ALTERNATING = Pattern.compile("(?i)\\s*(?:v|a|volts?|amps?)\\s*(?:ac|rms|peak).*");
    private static final Pattern GROUPED_DIGITS = Pattern.compile("[ '’_][0-9].*|\\.[0-9]+.*");

    private Units() {
    }

    /**
     * Reads a quantity: a number with a decimal point and a unit, such as {@code 18 in}, {@code 0.45 m}, {@code 30 mA},
     * {@code 85 %}, {@code 105 °C}. The space may be left out. Lengths may be fractions of an inch, {@code 1 1/2 in},
     * and feet with inches, {@code 5' 6"}.
     *
     * @param text what was written, at most 30 characters
     * @return the value in SI (temperatures in degrees Celsius, percentages as plain ratios), correctly rounded: two
     *         exact spellings of one quantity give the same double
     * @throws UnitException when it is no such text; the message says what is wrong and how to write it
     */
    public static Quantity parse(String text) throws UnitException {
        return read(text, null);
    }

    /**
     * Reads a quantity of a given dimension; see {@link #parse(String)}.
     *
     * @throws UnitException also when it is a quantity of another dimension
     */
    public static Quantity parse(String text, Dimension expected) throws UnitException {
        Quantity quantity = read(text, Objects.requireNonNull(expected));
        if (quantity.dimension() != expected) {
            throw new UnitException(quote(text) + " is " + quantity.dimension().noun() + ", and "
                    + expected.noun() + " is needed here.", write(expected));
        }
        return quantity;
    }

    /**
     * Prints a value in the form the trade reads: lengths in mm below 1 m and in m with two decimals from there on,
     * ratios in percent, resistances in mohm below 0.1 ohm, three significant digits where nothing else is usual. Where
     * {@link UnitSystem#US} is open: lengths in inches, from 6 ft on in feet, and so on.
     *
     * @param si finite value in the unit {@link Dimension#symbol()} names
     * @return a text that {@link #parse(String)} reads (for values a vehicle can have); never with an exponent, never a
     *         negative zero
     * @throws IllegalArgumentException when the value is not finite
     */
    public static String print(double si, Dimension dimension) {
        return Printer.print(new Quantity(si, dimension));
    }

    /**
     * Prints the difference of two values, such as a margin: as {@link #print}, but for a temperature the number of
     * degrees between the two.
     *
     * @throws IllegalArgumentException when the value is not finite
     */
    public static String printDifference(double si, Dimension dimension) {
        Quantity quantity = new Quantity(si, dimension);
        return dimension == Dimension.TEMPERATURE ? Printer.printDegrees(quantity.si()) : Printer.print(quantity);
    }

    /**
     * A quantity as it was written, with its value in the units that are printed before it where those are others:
     * {@code 39.8 in (1.01 m)}. A text that is no quantity stays as it is.
     */
    public static String alsoIn(String written) {
        try {
            Quantity quantity = parse(written);
            String printed = Printer.print(quantity);
            return UnitSystem.current() == UnitSystem.METRIC || printed.equals(written) ? written : printed + " (" + written + ")";
        } catch (UnitException e) {
            return written;
        }
    }

    /**
     * Reads a cable size. Sizes are names, not quantities.
     *
     * @param text such as {@code 4 AWG}, {@code 4 ga}, {@code 1/0}, {@code 0 AWG} or {@code 25 mm2}
     * @return the one name of that size: {@code 4 AWG}, {@code 1/0 AWG}, {@code 25 mm2}
     * @throws UnitException when it is no size; the message lists what is read. A size that is read need not be one that
     *                       the conductor table knows
     */
    public static String parseSize(String text) throws UnitException {
        return CableSize.parse(clean(text, "a cable size", CableSize.FIX), quote(text));
    }

    private static Quantity read(String text, Dimension expected) throws UnitException {
        String fix = write(expected);
        String clean = clean(text, expected == null ? "a value with its unit" : expected.noun(), fix);
        Quantity inches = Inches.parse(clean);
        if (inches != null) {
            return inches;
        }
        Matcher matcher = NUMBER.matcher(clean);
        if (!matcher.lookingAt()) {
            throw new UnitException(quote(text) + " does not begin with a number.", fix);
        }
        String number = matcher.group();
        String rest = clean.substring(matcher.end());
        Unit unit = UnitTable.find(rest.strip());
        if (unit == null) {
            throw refusal(quote(text), rest, expected, fix);
        }
        double si = unit.toSi(new BigDecimal(number));
        if (unit.dimension() == Dimension.TEMPERATURE && si < ABSOLUTE_ZERO_CELSIUS) {
            throw new UnitException(quote(text) + " lies below absolute zero.", fix);
        }
        return new Quantity(si, unit.dimension());
    }

    private static UnitException refusal(String quoted, String rest, Dimension expected, String fix) {
        if (rest.isEmpty()) {
            return new UnitException(quoted + " has no unit.", fix);
        }
        if (COMMA.matcher(rest).matches()) {
            return new UnitException(quoted + " has a comma, which some read as a decimal point and some as a thousands mark.",
                    "Write a decimal point and no thousands marks, such as \"1.2 m\" or \"1200 W\".");
        }
        if (POWER_OF_TEN.matcher(rest).matches()) {
            return new UnitException(quoted + " is written with a power of ten.", "Write the number out, or take another unit.");
        }
        if (FRACTION.matcher(rest).matches()) {
            return new UnitException(quoted + " is written as a fraction.", "Write it with a decimal point, such as \"0.375 in\"; halves to sixty-fourths of an inch may stay: \"3/8 in\".");
        }
        if (FEET_AND_INCHES.matcher(rest).matches()) {
            return new UnitException(quoted + " has two units.", "Write it as \"5 ft 6 in\" or \"66 in\": whole feet, and fewer than twelve inches.");
        }
        if (GROUPED_DIGITS.matcher(rest).matches()) {
            return new UnitException(quoted + " has more than one number, or a thousands mark in its number.",
                    "Write one number without marks, such as \"1200 W\".");
        }
        if (RATING.matcher(rest).matches()) {
            return new UnitException(quoted + " says how the power was rated, and makers mean different things by that.",
                    "Write the power alone, such as \"100 W\": what it can do with a sine at its rated load, or draw all the time.");
        }
        if (ALTERNATING.matcher(rest).matches()) {
            return new UnitException(quoted + " is not direct current.", fix);
        }
        String spelling = rest.strip();
        if (UnitTable.differsInCaseOnly(spelling)) {
            return new UnitException(quoted + " has a unit in which capitals matter, and " + quote(spelling) + " is none that is known.", fix);
        }
        return new UnitException(quoted + " has the unit " + quote(spelling) + ", which is not known" + UnitTable.near(spelling, expected), fix);
    }

    /** The text as a message shows it: what a terminal would act on is left out. */
    private static String quote(String text) {
        return "\"" + text.strip().replaceAll("\\p{Cntrl}", " ") + "\"";
    }

    private static String write(Dimension expected) {
        return expected == null
                ? "Write a number and a unit, such as \"18 in\", \"0.45 m\", \"30 mA\", \"14.4 V\", \"2 ohm\", \"95 W\", \"85 %\" or \"4 h\"."
                : "Write " + expected.noun() + " as " + expected.examples() + ".";
    }

    private static String clean(String text, String noun, String fix) throws UnitException {
        if (text == null || text.isBlank()) {
            throw new UnitException("Nothing is written where " + noun + " is needed.", fix);
        }
        String clean = text.strip();
        if (clean.length() > MOST_CHARACTERS) {
            throw new UnitException(quote(clean.substring(0, MOST_CHARACTERS) + "...") + " is too long for " + noun + ".", fix);
        }
        if (clean.chars().allMatch(character -> character < 128)) {
            return clean;
        }
        return Normalizer.normalize(clean.replace('º', '°'), Normalizer.Form.NFKC).replace('−', '-').strip();
    }
}
