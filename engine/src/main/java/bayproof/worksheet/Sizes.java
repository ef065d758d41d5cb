package bayproof.worksheet;

import bayproof.read.SharedTables;
import bayproof.units.Units;
import bayproof.units.UnitException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A cable size beside its like in the other system. */
public final class Sizes {
    private static final String GAUGE = " AWG";
    private static final double SQUARE_METRES_PER_MM2 = 1e-6;
    /** Gauges that are made for vehicles, thick to thin: 4/0 to 22. */
    private static final int THICKEST = -3;
    private static final int THINNEST = 22;

    private Sizes() {
    }

    /**
     * The size in the other system: of a gauge its metal in mm2 (ASTM B258), of a metric size the gauge whose metal is nearest
     * in proportion.
     *
     * @param size a known size, such as {@code 4 AWG} or {@code 25 mm2}
     */
    public static String other(String size) {
        double area = SharedTables.conductors().areaSquareMetres(size);
        return size.endsWith(GAUGE) ? squareMillimetres(area) : "near " + nearestGauge(area);
    }

    private static String squareMillimetres(double area) {
        BigDecimal mm2 = BigDecimal.valueOf(area / SQUARE_METRES_PER_MM2).round(new MathContext(3, RoundingMode.HALF_UP));
        return (mm2.scale() < 0 ? mm2.setScale(0) : mm2).toPlainString() + " mm2";
    }

    private static String nearestGauge(double area) {
        String nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (int number = THICKEST; number <= THINNEST; number++) {
            String gauge = name(number);
            double apart = Math.abs(Math.log(SharedTables.conductors().areaSquareMetres(gauge) / area));
            if (apart < least) {
                least = apart;
                nearest = gauge;
            }
        }
        return nearest;
    }

    private static String name(int number) {
        try {
            return Units.parseSize(number > 0 ? number + GAUGE : (1 - number) + "/0" + GAUGE);
        } catch (UnitException e) {
            throw new IllegalStateException(e);
        }
    }
}
