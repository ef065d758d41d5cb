package bayproof.solve;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a cable of a named size is: its area, its resistance, the current it may carry, and the sizes next to it.
 * Sizes go by their one name, {@code 4 AWG}, {@code 1/0 AWG}, {@code 25 mm2}; every whole gauge from 22 AWG to 4/0 AWG
 * and every metric size of the table is known. Immutable.
 */
public final class Conductors {
    private static final double REFERENCE_CELSIUS = 20;
    private static final double SQUARE_METRES_PER_MM2 = 1e-6;
    /** Areas this close, as a share, are called the same. */
    private static final double SAME_AREA = 0.01;

    /**
     * A known size.
     *
     * @param gauge              whether it is an American wire gauge, not a metric size
     * @param ohmsPerMetreAt20   resistance at 20 °C in copper
     * @param baseAmperes        current for each insulation class, or null when the table ends above this size
     */
    private record Size(String name, boolean gauge, double areaSquareMetres, double ohmsPerMetreAt20, List<Double> baseAmperes) {
    }

    private final ConductorTable table;
    private final AmbientFactor ambientFactor;
    private final Map<String, Size> sizes = new HashMap<>();
    /** Sizes that may be proposed, thin to thick. */
    private final List<Size> ladder;

    /** @throws IllegalArgumentException when the table names a gauge, a metric size or a row that cannot be */
    public Conductors(ConductorTable table) {
        this.table = table;
        this.ambientFactor = new AmbientFactor(table.ampacity());
        Map<String, Double> rowAreas = new HashMap<>();
        for (int number = Gauge.THINNEST; number >= Gauge.THICKEST; number--) {
            double area = Gauge.areaSquareMetres(number);
            String name = Gauge.name(number);
            if (table.ampacity().rowsAmperes().containsKey(name)) {
                rowAreas.put(name, area);
            }
            double ohms = table.ohmSquareMetresPerMetre() / area * table.layFactor();
            sizes.put(name, new Size(name, true, area, ohms, row(area, rowAreas)));
        }
        if (rowAreas.size() != table.ampacity().rowsAmperes().size()) {
            throw new IllegalArgumentException("the ampacity table has rows for sizes that are not known");
        }
        table.metricOhmsPerMetre().forEach((name, ohms) -> {
            if (!name.endsWith(" mm2")) {
                throw new IllegalArgumentException(name + " is not a metric size");
            }
            double area = Double.parseDouble(name.substring(0, name.length() - 4)) * SQUARE_METRES_PER_MM2;
            sizes.put(name, new Size(name, false, area, ohms, row(area, rowAreas)));
        });
        List<Size> proposed = new ArrayList<>();
        table.gaugeLadder().forEach(name -> proposed.add(size(name)));
        table.metricOhmsPerMetre().keySet().forEach(name -> proposed.add(size(name)));
        proposed.sort(Comparator.comparingDouble(Size::areaSquareMetres));
        ladder = List.copyOf(proposed);
    }

    /** The row of the largest gauge not bigger in area: never the current of more copper than there is. */
    private List<Double> row(double area, Map<String, Double> rowAreas) {
        return rowAreas.entrySet().stream().filter(row -> row.getValue() <= area)
                .max(Map.Entry.comparingByValue()).map(row -> table.ampacity().rowsAmperes().get(row.getKey())).orElse(null);
    }

    /** Whether there is data for a size; every other method refuses a size that is not known. */
    public boolean knows(String size) {
        return sizes.containsKey(size);
    }

    /**
     * Metal cross section.
     *
     * @param size a known size
     * @return square meters; a gauge's by ASTM B258, a metric size's nominal one
     * @throws IllegalArgumentException when the size is not known
     */
    public double areaSquareMetres(String size) {
        return size(size).areaSquareMetres();
    }

    /**
     * A size in the other system: the area of a gauge, {@code 21.2 mm2}, or for a metric size the gauge of the same area
     * or the two it lies between, {@code 4 to 3 AWG}.
     *
     * @param size a known size
     * @throws IllegalArgumentException when the size is not known
     */
    public String otherSystem(String size) {
        double area = areaSquareMetres(size);
        if (size.endsWith("AWG")) {
            return new BigDecimal(area / SQUARE_METRES_PER_MM2).round(new MathContext(3)).toPlainString() + " mm2";
        }
        int thinner = Gauge.THINNEST + 1;
        while (thinner > Gauge.THICKEST && Gauge.areaSquareMetres(thinner - 1) <= area * (1 + SAME_AREA)) {
            thinner--;
        }
        if (thinner > Gauge.THINNEST) {
            return "thinner than " + Gauge.name(Gauge.THINNEST);
        }
        if (area <= Gauge.areaSquareMetres(thinner) * (1 + SAME_AREA)) {
            return Gauge.name(thinner);
        }
        return thinner == Gauge.THICKEST ? "thicker than " + Gauge.name(thinner)
                : Gauge.name(thinner).replace(" AWG", "") + " to " + Gauge.name(thinner - 1);
    }

    /**
     * Resistance of one meter of one conductor at a temperature.
     *
     * <p>At 20 °C: a gauge has the resistivity of copper over its area, times the lay factor of stranded wire (NFPA 70
     * Chapter 9 Table 8); a metric size has its greatest resistance (IEC 60228 class 5). At T: times (234.5 + T)/254.5
     * for both. IEC 60228's own factor, 250/(230 + T), is a rounded one for correcting a measurement to 20 °C; one metal
     * gets one law here, so that two cables compare by their size alone. Copper-clad aluminum takes copper's law as well,
     * its coefficient being within a few percent of copper's (from memory).
     *
     * @param size    a known size
     * @param metal   {@code copper}, {@code clad-10} or {@code clad-15} (ASTM B566)
     * @param celsius conductor temperature, above the table's zero-resistance temperature
     * @return ohms per meter, above 0
     * @throws IllegalArgumentException when size or metal is not known, or the temperature is too low
     */
    public double ohmsPerMetre(String size, String metal, double celsius) {
        if (!(celsius > table.zeroResistanceCelsius())) {
            throw new IllegalArgumentException("no conductor has a temperature of " + celsius + " degC");
        }
        double warmth = (celsius - table.zeroResistanceCelsius()) / (REFERENCE_CELSIUS - table.zeroResistanceCelsius());
        return size(size).ohmsPerMetreAt20() / conductivity(metal) * warmth;
    }

    /**
     * The current a single conductor may carry all the time.
     *
     * <p>33 CFR 183.425 Table 5 at 30 °C; a size between two rows takes the row of the thinner, an insulation rating
     * between two classes the class below, for its ambient factor too. Copper-clad aluminum: times the square root of
     * its conductivity against copper (derived: equal heat in equal sizes).
     *
     * @param size              a known size
     * @param metal             {@code copper}, {@code clad-10} or {@code clad-15}
     * @param insulationCelsius what the insulation is rated for
     * @param ambientCelsius    hottest ambient along the conductor
     * @return amperes, 0 where the ambient alone uses the insulation up; empty where the table has no figure: a size
     *         thinner than 18 AWG, or insulation below the lowest class
     * @throws IllegalArgumentException when size or metal is not known
     */
    public OptionalDouble ampacityAmperes(String size, String metal, double insulationCelsius, double ambientCelsius) {
        List<Double> row = size(size).baseAmperes();
        double metalFactor = Math.sqrt(conductivity(metal));
        int classIndex = ambientFactor.classIndex(insulationCelsius);
        if (row == null || classIndex < 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(row.get(classIndex) * metalFactor * ambientFactor.factor(classIndex, ambientCelsius));
    }

    /** Sizes of the same system that are thicker and may be proposed, the nearest first. */
    public List<String> larger(String size) {
        Size from = size(size);
        return ladder.stream().filter(each -> each.gauge() == from.gauge() && each.areaSquareMetres() > from.areaSquareMetres())
                .map(Size::name).toList();
    }

    private Size size(String name) {
        Size size = sizes.get(name);
        if (size == null) {
            throw new IllegalArgumentException("there is no data for the size " + name);
        }
        return size;
    }

    private double conductivity(String metal) {
        Double conductivity = table.conductivity().get(metal);
        if (conductivity == null) {
            throw new IllegalArgumentException("there is no data for the conductor metal " + metal);
        }
        return conductivity;
    }
}
