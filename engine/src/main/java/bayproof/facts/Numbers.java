package bayproof.facts;

import bayproof.units.Dimension;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Every figure that was worked out for a job, with the formula and its numbers put in, by path. */
public final class Numbers {
    /**
     * One figure.
     *
     * @param value       the figure, SI
     * @param dimension   what it measures
     * @param working   writes the formula with its numbers put in; most figures are never printed
     */
    public record Figure(double value, Dimension dimension, Supplier<String> working) {
        /** The formula with its numbers put in. */
        public String calculation() {
            return working.get();
        }
    }

    private final Map<String, Figure> byPath = new TreeMap<>();

    void put(String path, double value, Dimension dimension, Supplier<String> calculation) {
        byPath.put(path, new Figure(value, dimension, calculation));
    }

    public Map<String, Figure> all() {
        return Collections.unmodifiableMap(byPath);
    }
}
