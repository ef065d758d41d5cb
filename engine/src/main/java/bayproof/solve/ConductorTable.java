package bayproof.solve;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The published figures {@link Conductors} works from.
 *
 * @param ohmSquareMetresPerMetre  resistivity of copper at 20 °C, ohm m2/m; 1.7241e-8 by the International Annealed
 *                                 Copper Standard
 * @param zeroResistanceCelsius    temperature at which copper's straight line of resistance meets zero, -234.5 °C
 * @param layFactor                resistance of a stranded conductor against a solid one of the same gauge, at least 1
 * @param gaugeLadder              gauges the trade sells, {@code 4 AWG}; any order
 * @param metricOhmsPerMetre       greatest resistance at 20 °C of each metric size, by name, {@code 25 mm2}
 * @param conductivity             conductivity of each conductor metal against copper, 0 to 1, by name
 * @param ampacity                 the current each gauge may carry
 */
public record ConductorTable(double ohmSquareMetresPerMetre, double zeroResistanceCelsius, double layFactor,
                             List<String> gaugeLadder, Map<String, Double> metricOhmsPerMetre,
                             Map<String, Double> conductivity, AmpacityTable ampacity) {
    public ConductorTable {
        gaugeLadder = List.copyOf(gaugeLadder);
        metricOhmsPerMetre = Map.copyOf(metricOhmsPerMetre);
        conductivity = Map.copyOf(conductivity);
        Objects.requireNonNull(ampacity);
    }
}
