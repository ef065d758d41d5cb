package bayproof.units;

/** What a quantity measures; values of each dimension are kept as doubles in the unit {@link #symbol()} names. */
public enum Dimension {
    LENGTH("m", "a length", "\"18 in\" or \"0.45 m\""),
    AREA("m2", "an area", "\"320 cm2\" or \"50 in2\""),
    VOLUME("m3", "a volume", "\"36 L\" or \"1.25 ft3\""),
    MASS("kg", "a mass", "\"12 kg\" or \"26 lb\""),
    TIME("s", "a time", "\"4 h\", \"30 min\" or \"1.2 ms\""),
    FREQUENCY("Hz", "a frequency", "\"28 Hz\" or \"1 kHz\""),
    CURRENT("A", "a current", "\"30 mA\" or \"80 A\""),
    VOLTAGE("V", "a voltage", "\"14.4 V\" or \"125 mV\""),
    RESISTANCE("ohm", "a resistance", "\"2 ohm\" or \"0.5 mohm\""),
    POWER("W", "a power", "\"95 W\" or \"1.2 kW\""),
    CAPACITANCE("F", "a capacitance", "\"4.7 uF\""),
    INDUCTANCE("H", "an inductance", "\"0.33 mH\""),
    CHARGE("C", "a battery capacity", "\"70 Ah\""),
    SPEED("m/s", "a speed", "\"17 m/s\""),
    FORCE("N", "a force", "\"1.8 kN\" or \"450 N\""),
    TORQUE("N m", "a torque", "\"8 N m\" or \"70 in-lb\""),
    /** Kept in degrees Celsius, not in kelvins: every table of the trade is in degrees Celsius. */
    TEMPERATURE("degC", "a temperature", "\"105 °C\""),
    /** Kept in decibels; what the level is against stands with the value. */
    LEVEL("dB", "a level", "\"-5 dBFS\" or \"95 dBA\""),
    /** Kept as a plain number: 85 % is 0.85. */
    RATIO("1", "a percentage", "\"85 %\"");

    private final String symbol;
    private final String noun;
    private final String examples;

    Dimension(String symbol, String noun, String examples) {
        this.symbol = symbol;
        this.noun = noun;
        this.examples = examples;
    }

    /**
     * The dimension whose values are kept in a unit.
     *
     * @param symbol a symbol as {@link #symbol()} gives it
     * @throws IllegalArgumentException when no dimension has this symbol
     */
    public static Dimension ofSymbol(String symbol) {
        for (Dimension dimension : values()) {
            if (dimension.symbol.equals(symbol)) {
                return dimension;
            }
        }
        throw new IllegalArgumentException("no dimension is kept in \"" + symbol + "\"");
    }

    /** Symbol of the unit that values are kept in, plain ASCII: {@code m}, {@code ohm}, {@code degC}, {@code 1}. */
    public String symbol() {
        return symbol;
    }

    /** The dimension's name with its article, for messages: "a length". */
    public String noun() {
        return noun;
    }

    /** Quoted examples of how such a quantity is written, for messages. */
    public String examples() {
        return examples;
    }
}
