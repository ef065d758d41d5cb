package bayproof.solve.sound;

import java.util.List;

/**
 * What an ohmmeter reads across speaker wires, leads held together first and that reading taken off. Copper: resistance goes with
 * (234.5 + T)/254.5 against 20 °C (US handbook law for copper).
 *
 * @param low  least reading, ohm
 * @param high greatest reading, ohm; infinite for an open circuit
 */
public record MeterReading(double low, double high) {
    private static final double ZERO_RESISTANCE_CELSIUS = -234.5;
    private static final double REFERENCE_CELSIUS = 20;

    /**
     * The window of readings.
     *
     * @param least        the net with every coil at its least DC resistance at 20 °C
     * @param greatest     the net with every coil at its greatest DC resistance at 20 °C
     * @param wireOhms     both conductors of the wire at 20 °C
     * @param coldCelsius  coldest coil and wire
     * @param warmCelsius  warmest coil and wire
     */
    public static MeterReading of(SpeakerNet least, SpeakerNet greatest, double wireOhms, double coldCelsius, double warmCelsius) {
        return new MeterReading((least.directOhms() + wireOhms) * copperFactor(coldCelsius),
                (greatest.directOhms() + wireOhms) * copperFactor(warmCelsius));
    }

    /** Resistance of copper at a temperature against 20 °C: (234.5 + T)/254.5. */
    public static double copperFactor(double celsius) {
        return (celsius - ZERO_RESISTANCE_CELSIUS) / (REFERENCE_CELSIUS - ZERO_RESISTANCE_CELSIUS);
    }

    /** How far two readings lie apart, as a share of the smaller; infinite where one of them is a short and the other is not. */
    public static double apartShare(double one, double other) {
        return one == other ? 0 : Math.abs(one - other) / Math.min(one, other);
    }

    /** Whether a reading lies in this window. */
    public boolean holds(double ohms) {
        return ohms >= low && ohms <= high;
    }

    /** Whether some reading lies in both windows: then a reading there cannot tell the one from the other. */
    public boolean meets(MeterReading other) {
        return low <= other.high && other.low <= high || Double.isInfinite(low) && Double.isInfinite(other.low);
    }

    /** A fault with the readings that it gives. */
    public record OfFault(CoilFault fault, MeterReading window) {
    }

    /**
     * The readings of every fault that the net can have; see {@link #of}. Faults come in the order of {@link CoilFault#all}.
     *
     * @param least    the net as planned, every coil at its least DC resistance
     * @param greatest the same net, every coil at its greatest
     */
    public static List<OfFault> ofFaults(SpeakerNet least, SpeakerNet greatest, double wireOhms, double coldCelsius, double warmCelsius) {
        List<CoilFault> low = CoilFault.all(least);
        List<CoilFault> high = CoilFault.all(greatest);
        return java.util.stream.IntStream.range(0, low.size())
                .mapToObj(i -> new OfFault(low.get(i), of(low.get(i).net(), high.get(i).net(), wireOhms, coldCelsius, warmCelsius))).toList();
    }
}
