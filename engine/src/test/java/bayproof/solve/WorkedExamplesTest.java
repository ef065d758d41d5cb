package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.read.SharedTables;
import bayproof.support.Tally;
import bayproof.units.Dimension;
import bayproof.units.UnitException;
import bayproof.units.Units;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of published sources: voltage drop, choice of a size, choice of a fuse.
 *
 * <p>Not used: the other 88 cells of ABYC E-11 Table IX (the cells are not at hand, and working them out by the formula
 * behind the table would compare two computations of our own); that table's formula with 10.75 ohm circular mils per
 * foot and SAE areas (the engine has gauges by ASTM B258); the runtime example after Peukert and the reserve-capacity
 * rule (no function of the engine).
 */
class WorkedExamplesTest {
    private final Conductors conductors = SharedTables.conductors();
    private final FuseLadder fuses = SharedTables.fuses();

    /** Volts lost in one conductor between an ideal source and a load of constant current. */
    private static double dropVolts(double sourceVolts, double ohms, double amperes) {
        Network network = new Network.Builder("return")
                .regulated("source", "post", "return", sourceVolts, Double.POSITIVE_INFINITY)
                .branch("wire", "post", "load", ohms)
                .constantCurrent("item", "load", "return", amperes, 0)
                .build();
        OperatingPoint point = (OperatingPoint) Solver.solve(network);
        return sourceVolts - point.loadVolts("item");
    }

    private static double metres(String length) throws UnitException {
        return Units.parse(length, Dimension.LENGTH).si();
    }

    /** Ohms of a wire that has so many ohms per foot. */
    private static double ohms(double ohmsPerFoot, String length) throws UnitException {
        return ohmsPerFoot / metres("1 ft") * metres(length);
    }

    /**
     * FAA AC 43.13-1B Table 11-7: No. 6, 4, 12 and 14 wire at 20 A. Half a unit of the last printed digit; the third is
     * 3.555 V, rounded up in print to the next tenth of a volt.
     */
    @Test
    void dropsOfTheAircraftTable() throws UnitException {
        assertEquals(0.942, dropVolts(28, ohms(0.00044, "107 ft"), 20), 0.0005);
        assertEquals(0.504, dropVolts(28, ohms(0.00028, "90 ft"), 20), 0.0005);
        assertEquals(3.6, dropVolts(115, ohms(0.00202, "88 ft"), 20), 0.05);
        assertEquals(6.12, dropVolts(200, ohms(0.00306, "100 ft"), 20), 0.005);
        Tally.count("outside checks", 4);
    }

    /** FAA AC 43.13-1B Table 11-8, second row, prints 0.366 V for 0.00126 ohm/ft, 19.5 ft and 20 A: a misprint of 0.491. */
    @Test
    void theMisprintedAircraftDropIsNotCopied() throws UnitException {
        double drop = dropVolts(28, ohms(0.00126, "19.5 ft"), 20);
        assertTrue(Math.abs(drop - 0.366) > 0.1, "the engine gives the misprint");
        assertEquals(0.491, drop, 0.0005);
        Tally.count("outside checks", 1);
    }

    /** FAA AC 43.13-1B p. 11-26, example 1: 28 V, 1 V allowed, 50 ft with the return, 20 A, at most 20 °C: No. 8. */
    @Test
    void theSizeOfTheAircraftExample() throws UnitException {
        double length = metres("50 ft");
        String size = Stream.concat(Stream.of("22 AWG"), conductors.larger("22 AWG").stream())
                .filter(each -> dropVolts(28, conductors.ohmsPerMetre(each, "copper", 20) * length, 20) <= 1)
                .findFirst().orElseThrow();
        assertEquals("8 AWG", size);
        Tally.count("outside checks", 1);
    }

    /**
     * A training page (electrician2.com, lesson 135): No. 16 wire, 4.99 ohm/1000 ft, 100 ft of two-wire circuit, 4 A: 4.0 V,
     * half a unit of the last digit; of 24 V, 16.7 % in print, which is 4.0/24: its own step of 0.1 %.
     */
    @Test
    void theTwoWireExample() throws UnitException {
        double printed = dropVolts(24, ohms(0.00499, "200 ft"), 4);
        assertEquals(4.0, printed, 0.05);
        assertEquals(16.7, printed / 24 * 100, 0.1);
        assertEquals("16.7 %", Units.print(4.0 / 24, Dimension.RATIO));
        double ownWire = dropVolts(24, conductors.ohmsPerMetre("16 AWG", "copper", 75) * metres("200 ft"), 4);
        assertEquals(4.0, ownWire, 0.05);
        Tally.count("outside checks", 4);
    }

    /**
     * ABYC E-11 Table IX (3 % of 12 V), cell 15 A at 60 ft: the table prints 6, where its own formula needs more than a
     * 6 gauge has and gives 4. The engine gives 4 as well.
     */
    @Test
    void theOddCellOfTheMarineTableIsNotCopied() throws UnitException {
        double length = metres("60 ft");
        List<String> enough = conductors.larger("8 AWG").stream()
                .filter(each -> dropVolts(12, conductors.ohmsPerMetre(each, "copper", 20) * length, 15) <= 0.36).toList();
        assertEquals("4 AWG", enough.get(0));
        Tally.count("outside checks", 1);
    }

    /**
     * DIN 72581-3 form E: conventional currents, 1.35 times the rating, printed in whole amperes. Each must lead back to
     * one rating of the ladder to half an ampere of print (0.5 A/1.35); the one printed for 60 A, 80 A, is a misprint of
     * 81 and leads to none.
     */
    @Test
    void fuseRatingsBehindTheConventionalCurrents() {
        double[][] ratingAndCurrent = {{20, 27}, {30, 40}, {40, 54}, {50, 68}, {70, 95}, {80, 108}};
        for (double[] row : ratingAndCurrent) {
            assertEquals(List.of(row[0]), ratingsNear(row[1] / 1.35), row[1] + " A");
        }
        assertEquals(List.of(), ratingsNear(80 / 1.35), "the engine has a fuse for the misprint");
        assertEquals(List.of(60.0), ratingsNear(81 / 1.35));
        Tally.count("outside checks", ratingAndCurrent.length + 1);
    }

    private List<Double> ratingsNear(double amperes) {
        double rounding = 0.5 / 1.35 + 1e-9;
        return fuses.above(amperes - rounding).stream().filter(rating -> rating <= amperes + rounding).toList();
    }

    /** A fuse guide (quoted by teacherscollegesj.org): 7.5 A at 25 °C with 75 % loading takes a 10 A fuse. */
    @Test
    void theFuseOfTheLoadingExample() {
        assertEquals(10, fuses.above(7.5).stream().filter(rating -> 7.5 <= 0.75 * rating).findFirst().orElseThrow());
        assertTrue(fuses.below(10).stream().noneMatch(rating -> 7.5 <= 0.75 * rating));
        Tally.count("outside checks", 1);
    }
}
