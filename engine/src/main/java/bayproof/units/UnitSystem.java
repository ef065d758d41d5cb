package bayproof.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The units in which lengths, areas, volumes, masses, torques and temperatures are printed. What is read is the same in
 * both. The choice holds for one thread while its scope is open; outside of any scope printing is metric.
 */
public enum UnitSystem {
    /** Meters, liters, kilograms, degrees Celsius. */
    METRIC,
    /** Inches and feet, cubic feet, pounds, degrees Fahrenheit: the customary units of the United States. */
    US;

    private static final ThreadLocal<UnitSystem> CURRENT = ThreadLocal.withInitial(() -> METRIC);

    /** While it is open, this thread prints in one system. */
    public interface Scope extends AutoCloseable {
        @Override
        void close();
    }

    /** Prints in this system until the scope is closed. */
    public Scope open() {
        UnitSystem before = CURRENT.get();
        CURRENT.set(this);
        return () -> CURRENT.set(before);
    }

    /** The system whose scope is open on this thread. */
    public static UnitSystem current() {
        return CURRENT.get();
    }

    /** Its name on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The system of a name. */
    public static UnitSystem of(String word) {
        return Arrays.stream(values()).filter(system -> system.word().equals(word)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no system of units is called " + word));
    }

    /** All names. */
    public static List<String> words() {
        return Arrays.stream(values()).map(UnitSystem::word).toList();
    }
}
