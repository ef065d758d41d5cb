package bayproof.solve;

import java.util.List;

/**
 * What is left of a conductor's current in a hot place. Heat carried off grows with the temperature difference and heat
 * made with the square of the current, so the factor is sqrt((Tclass - Ta)/(Tclass - T0)), T0 being the table's own
 * ambient (derived). From the hot-space ambient of the table's note up, the factor is never above the note's.
 */
final class AmbientFactor {
    private final AmpacityTable table;

    AmbientFactor(AmpacityTable table) {
        this.table = table;
    }

    /** Index of the highest insulation class not above a rating, or -1 when the rating is below the lowest. */
    int classIndex(double insulationCelsius) {
        List<Double> classes = table.classesCelsius();
        int index = -1;
        while (index + 1 < classes.size() && classes.get(index + 1) <= insulationCelsius) {
            index++;
        }
        return index;
    }

    /**
     * The factor, 0 to 1; never rises with the ambient.
     *
     * @throws IllegalArgumentException when the ambient is not a number
     */
    double factor(int classIndex, double ambientCelsius) {
        if (Double.isNaN(ambientCelsius)) {
            throw new IllegalArgumentException("the ambient is not a number");
        }
        double most = table.classesCelsius().get(classIndex);
        if (ambientCelsius >= most) {
            return 0;
        }
        if (ambientCelsius <= table.ambientCelsius()) {
            return 1;
        }
        double derived = Math.sqrt((most - ambientCelsius) / (most - table.ambientCelsius()));
        return ambientCelsius < table.hotAmbientCelsius() ? derived : Math.min(derived, table.hotFactors().get(classIndex));
    }
}
