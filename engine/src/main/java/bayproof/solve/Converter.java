package bayproof.solve;

/**
 * A DC-to-DC converter: a regulated source at its output that draws at its input what it gives, over its efficiency.
 *
 * @param source     id of the regulated source that is its output
 * @param input      id of the load of a held power that is its input
 * @param efficiency output power over input power, above 0
 */
public record Converter(String source, String input, double efficiency) {
    /**
     * Checks the efficiency.
     *
     * @throws IllegalArgumentException if it is out of range
     */
    public Converter {
        Checks.above0("converter", source, "efficiency", efficiency);
    }
}
