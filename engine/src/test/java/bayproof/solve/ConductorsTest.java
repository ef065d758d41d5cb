package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.SharedTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConductorsTest {
    private static final List<String> GAUGES = List.of("22 AWG", "20 AWG", "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG",
            "8 AWG", "6 AWG", "4 AWG", "3 AWG", "2 AWG", "1 AWG", "1/0 AWG", "2/0 AWG", "3/0 AWG", "4/0 AWG");
    private static final List<String> METRIC = List.of("0.5 mm2", "0.75 mm2", "1 mm2", "1.5 mm2", "2.5 mm2", "4 mm2", "6 mm2",
            "10 mm2", "16 mm2", "25 mm2", "35 mm2", "50 mm2", "70 mm2", "95 mm2", "120 mm2");

    private final Conductors conductors = SharedTables.conductors();

    @Test
    void laddersGoThroughAllSizesOfOneSystem() {
        for (List<String> ladder : List.of(GAUGES, METRIC)) {
            for (int i = 0; i < ladder.size(); i++) {
                assertEquals(ladder.subList(i + 1, ladder.size()), conductors.larger(ladder.get(i)));
            }
        }
    }

    @Test
    void aGaugeThatIsNotSoldHasDataAndNeighbors() {
        assertTrue(conductors.knows("5 AWG"));
        assertEquals("4 AWG", conductors.larger("5 AWG").get(0));
        assertFalse(conductors.larger("8 AWG").contains("5 AWG"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"23 AWG", "5/0 AWG", "0 AWG", "4AWG", "8 mm2", "25 mm²", "4", ""})
    void otherSizesAreRefused(String size) {
        assertFalse(conductors.knows(size));
        assertThrows(IllegalArgumentException.class, () -> conductors.areaSquareMetres(size));
        assertThrows(IllegalArgumentException.class, () -> conductors.ohmsPerMetre(size, "copper", 20));
        assertThrows(IllegalArgumentException.class, () -> conductors.ampacityAmperes(size, "copper", 105, 30));
        assertThrows(IllegalArgumentException.class, () -> conductors.larger(size));
    }

    @Test
    void otherMetalsAndTemperaturesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> conductors.ohmsPerMetre("4 AWG", "silver", 20));
        assertThrows(IllegalArgumentException.class, () -> conductors.ampacityAmperes("4 AWG", "silver", 105, 30));
        assertThrows(IllegalArgumentException.class, () -> conductors.ohmsPerMetre("4 AWG", "copper", -234.5));
        assertThrows(IllegalArgumentException.class, () -> conductors.ohmsPerMetre("4 AWG", "copper", Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> conductors.ampacityAmperes("4 AWG", "copper", 105, Double.NaN));
    }

    /** A metric size takes the row of the thickest gauge not bigger in area; amperes of 33 CFR 183.425 Table 5, 105 °C. */
    @ParameterizedTest
    @CsvSource({"1 mm2, 20", "1.5 mm2, 25", "2.5 mm2, 35", "4 mm2, 45", "6 mm2, 60", "10 mm2, 80", "16 mm2, 120", "25 mm2, 160",
        "35 mm2, 210", "50 mm2, 245", "70 mm2, 330", "95 mm2, 385", "120 mm2, 445", "5 AWG, 120"})
    void aSizeBetweenRowsTakesTheThinnerRow(String size, double amperes) {
        assertEquals(amperes, conductors.ampacityAmperes(size, "copper", 105, 30).orElseThrow(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"22 AWG", "20 AWG", "19 AWG", "0.5 mm2", "0.75 mm2"})
    void belowTheTableThereIsNoFigure(String size) {
        assertEquals(OptionalDouble.empty(), conductors.ampacityAmperes(size, "copper", 105, 30));
    }

    /** 4 AWG: 105, 125, 130, 135, 160, 170, 180 A for 60, 75, 80, 90, 105, 125, 200 °C. */
    @ParameterizedTest
    @CsvSource({"60, 105", "74.9, 105", "85, 130", "104, 135", "110, 160", "150, 170", "199, 170", "250, 180"})
    void aRatingBetweenClassesTakesTheClassBelow(double insulation, double amperes) {
        assertEquals(amperes, conductors.ampacityAmperes("4 AWG", "copper", insulation, 30).orElseThrow(), 1e-9);
    }

    @Test
    void insulationBelowTheLowestClassHasNoFigure() {
        assertEquals(OptionalDouble.empty(), conductors.ampacityAmperes("4 AWG", "copper", 59.9, 30));
        assertEquals(OptionalDouble.empty(), conductors.ampacityAmperes("4 AWG", "copper", Double.NaN, 30));
    }

    /** 160 A (4 AWG, 105 °C) times sqrt((105 - Ta)/75), worked by hand; 0.85 is the note's at 50 °C. */
    @ParameterizedTest
    @CsvSource({"-40, 160", "30, 160", "40, 148.95", "50, 136", "60, 123.94", "70, 109.30", "80, 92.38", "104, 18.48", "105, 0", "140, 0"})
    void aHotAmbientTakesCurrentAway(double ambient, double amperes) {
        assertEquals(amperes, conductors.ampacityAmperes("4 AWG", "copper", 105, ambient).orElseThrow(), 0.005);
    }

    /** sqrt(0.629) = 0.79310 and sqrt(0.644) = 0.80250, of 160 A. */
    @Test
    void cladCarriesLess() {
        assertEquals(126.90, conductors.ampacityAmperes("4 AWG", "clad-10", 105, 30).orElseThrow(), 0.005);
        assertEquals(128.40, conductors.ampacityAmperes("4 AWG", "clad-15", 105, 30).orElseThrow(), 0.005);
    }

    /** 4 AWG: 21.151 mm2; 0.81515 mohm/m solid, 1.02 times that stranded; 25 mm2: 0.780 mohm/m. */
    @Test
    void resistanceByHand() {
        assertEquals(21.151e-6, conductors.areaSquareMetres("4 AWG"), 0.0005e-6);
        assertEquals(25e-6, conductors.areaSquareMetres("25 mm2"), 1e-15);
        assertEquals(0.83145e-3, conductors.ohmsPerMetre("4 AWG", "copper", 20), 0.00001e-3);
        assertEquals(1.3219e-3, conductors.ohmsPerMetre("4 AWG", "clad-10", 20), 0.0001e-3);
        assertEquals(0.94857e-3, conductors.ohmsPerMetre("25 mm2", "copper", 75), 0.00001e-3);
    }

    @Provide
    Arbitrary<String> sizes() {
        List<String> all = new ArrayList<>(GAUGES);
        all.addAll(METRIC);
        return Arbitraries.of(all);
    }

    @Property(tries = 500)
    void moreHeatOrLessCopperNeverHelps(@ForAll("sizes") String size, @ForAll @DoubleRange(min = 60, max = 220) double insulation,
                                        @ForAll @DoubleRange(min = -40, max = 220) double cool,
                                        @ForAll @DoubleRange(min = 0, max = 60) double more) {
        OptionalDouble here = conductors.ampacityAmperes(size, "copper", insulation, cool);
        OptionalDouble hotter = conductors.ampacityAmperes(size, "copper", insulation, cool + more);
        assertEquals(here.isPresent(), hotter.isPresent());
        assertTrue(hotter.orElse(0) <= here.orElse(0));
        assertTrue(conductors.ohmsPerMetre(size, "copper", cool + more) >= conductors.ohmsPerMetre(size, "copper", cool));
        for (String thicker : conductors.larger(size)) {
            assertTrue(conductors.areaSquareMetres(thicker) > conductors.areaSquareMetres(size));
            assertTrue(conductors.ohmsPerMetre(thicker, "copper", cool) < conductors.ohmsPerMetre(size, "copper", cool));
            assertTrue(conductors.ampacityAmperes(thicker, "copper", insulation, cool).orElse(0) >= here.orElse(0));
        }
        for (String metal : List.of("clad-10", "clad-15")) {
            assertTrue(conductors.ohmsPerMetre(size, metal, cool) > conductors.ohmsPerMetre(size, "copper", cool));
            assertTrue(conductors.ampacityAmperes(size, metal, insulation, cool).orElse(0) <= here.orElse(0));
        }
    }

    private static AmpacityTable ampacity(Map<String, List<Double>> rows, List<Double> classes, List<Double> factors) {
        return new AmpacityTable(30, classes, rows, 50, factors);
    }

    @Test
    void aTableThatCannotBeIsRefused() {
        List<Double> classes = List.of(60.0, 75.0);
        Map<String, List<Double>> row = Map.of("4 AWG", List.of(105.0, 125.0));
        AmpacityTable good = ampacity(row, classes, List.of(0.58, 0.75));
        assertThrows(IllegalArgumentException.class, () -> ampacity(Map.of("4 AWG", List.of(105.0)), classes, List.of(0.58, 0.75)));
        assertThrows(IllegalArgumentException.class, () -> ampacity(row, classes, List.of(0.58)));
        assertThrows(IllegalArgumentException.class, () -> ampacity(row, List.of(75.0, 60.0), List.of(0.58, 0.75)));
        assertThrows(IllegalArgumentException.class, () -> conductors(List.of("4 AWG"), Map.of("25 mm", 0.00078), good));
        assertThrows(IllegalArgumentException.class, () -> conductors(List.of("41 AWG"), Map.of("25 mm2", 0.00078), good));
        assertThrows(IllegalArgumentException.class, () -> conductors(List.of("4 AWG"), Map.of("25 mm2", 0.00078),
                ampacity(Map.of("30 AWG", List.of(1.0, 2.0)), classes, List.of(0.58, 0.75))));
        assertTrue(conductors(List.of("4 AWG"), Map.of("25 mm2", 0.00078), good).knows("25 mm2"));
    }

    private static Conductors conductors(List<String> ladder, Map<String, Double> metric, AmpacityTable ampacity) {
        return new Conductors(new ConductorTable(1.7241e-8, -234.5, 1.02, ladder, metric, Map.of("copper", 1.0), ampacity));
    }
}
