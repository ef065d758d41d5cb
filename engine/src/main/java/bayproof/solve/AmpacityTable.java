package bayproof.solve;

import java.util.List;
import java.util.Map;

/**
 * The current that conductors may carry, in the shape of 33 CFR 183.425 Table 5.
 *
 * @param ambientCelsius    ambient the rows are for
 * @param classesCelsius    insulation classes, rising
 * @param rowsAmperes       by gauge name, one current for each class
 * @param hotAmbientCelsius ambient of the hot-space factors, above {@code ambientCelsius}
 * @param hotFactors        one factor for each class, above 0, at most 1
 */
public record AmpacityTable(double ambientCelsius, List<Double> classesCelsius, Map<String, List<Double>> rowsAmperes,
                            double hotAmbientCelsius, List<Double> hotFactors) {
    /** @throws IllegalArgumentException when a row or the factors do not have one figure for each class */
    public AmpacityTable {
        classesCelsius = List.copyOf(classesCelsius);
        rowsAmperes = Map.copyOf(rowsAmperes);
        hotFactors = List.copyOf(hotFactors);
        int classes = classesCelsius.size();
        rowsAmperes.forEach((size, row) -> {
            if (row.size() != classes) {
                throw new IllegalArgumentException("the row of " + size + " does not have " + classes + " currents");
            }
        });
        if (hotFactors.size() != classes) {
            throw new IllegalArgumentException("there are not " + classes + " hot-space factors");
        }
        if (!classesCelsius.equals(classesCelsius.stream().sorted().distinct().toList())) {
            throw new IllegalArgumentException("the insulation classes do not rise");
        }
    }
}
