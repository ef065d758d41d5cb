package bayproof.solve.acoustic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bayproof.solve.acoustic.Hollow.Direction;
import bayproof.solve.acoustic.OuterShape.Form;
import bayproof.solve.acoustic.OuterShape.Stand;
import java.util.EnumSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Shapes in spaces: sizes that can be checked with a pencil, and boxes in boxes by their sides. */
class OuterShapeTest {
    private static final OuterShape WEDGE = new OuterShape(Form.WEDGE, 0.4, 0.9, 0.35, 0.20, 0, 0);

    /** A trapezoid of 3-4-5: the slanted wall lies over 0.3 m depth and 0.4 m height, so its wall is 5/4 as thick level. */
    @Test
    void roomInside() {
        assertEquals(0.36 * 0.86 * 0.26, OuterShape.box(0.4, 0.9, 0.3).innerCubicMetres(0.02), 1e-12);
        assertEquals(2 * 0.36 * 0.86 * 0.26, new OuterShape(Form.PAIR, 0.4, 0.9, 0.3, 0.3, 0, 0.1).innerCubicMetres(0.02), 1e-12);
        OuterShape wedge = new OuterShape(Form.WEDGE, 0.4, 1.04, 0.5, 0.2, 0, 0);
        assertEquals((0.35 - 0.02 - 0.025) * 0.36 * 1.0, wedge.innerCubicMetres(0.02), 1e-12);
        // An L of two blocks, walls of 0.02: below 0.46 x 0.16, above 0.16 x 0.20.
        OuterShape l = new OuterShape(Form.L, 0.4, 1.04, 0.5, 0.2, 0.2, 0);
        assertEquals(0.46 * 0.16 + 0.16 * 0.20, l.innerCubicMetres(0.02), 1e-12);
        assertEquals(0, OuterShape.box(0.03, 0.9, 0.3).innerCubicMetres(0.02));
    }

    @Property
    void aBoxInABoxIsJudgedByItsSides(@ForAll @DoubleRange(min = 0.1, max = 1) double height, @ForAll @DoubleRange(min = 0.1, max = 1) double width,
            @ForAll @DoubleRange(min = 0.1, max = 1) double depth) {
        Hollow.Fit fit = new Hollow(0.7, 1.1, 0.4, 0.4).fit(OuterShape.box(height, width, depth), Stand.AS_DRAWN);
        assertEquals(Math.min((0.7 - height) / 2, Math.min((1.1 - width) / 2, (0.4 - depth) / 2)), fit.gapMetres(), 1e-12);
    }

    /** Back of a seat: 0.4 m at the floor, 0.2 m at 0.7 m. A box of 0.4 m height meets it at 0.4 - 0.2 x 4/7. */
    @Test
    void aSlopedBackTakesRoomAtTheTop() {
        Hollow seat = new Hollow(0.7, 1.1, 0.4, 0.2);
        double slope = 0.2 / 0.7;
        double cosine = 1 / Math.hypot(1, slope);
        double level = 0.4 - slope * 0.4 - 0.3;
        assertEquals(level * cosine / (1 + cosine), seat.gap(OuterShape.box(0.4, 0.9, 0.3), Stand.AS_DRAWN, Direction.DEPTH), 1e-12);
        assertTrue(level < 0, "the box does not fit although it is less deep than the floor");
        // The wedge has its deepest at the foot and 0.2 m at its top, where 0.2857 m are free.
        assertEquals(0.4 - 0.35, (1 + cosine) / cosine * seat.gap(WEDGE, Stand.AS_DRAWN, Direction.DEPTH), 1e-12);
        assertTrue(seat.gap(WEDGE, Stand.UPSIDE_DOWN, Direction.DEPTH) < 0);
    }

    @Test
    void waysToStand() {
        OuterShape tall = OuterShape.box(0.6, 0.3, 0.35);
        Hollow low = new Hollow(0.4, 1.0, 0.7, 0.7);
        assertTrue(low.fit(tall, Stand.AS_DRAWN).gapMetres() < 0);
        assertEquals(Stand.ON_ITS_BACK, low.best(tall, List.of(Stand.AS_DRAWN, Stand.ON_ITS_BACK)).stand());
        assertEquals(0.025, low.best(tall, List.of(Stand.AS_DRAWN, Stand.ON_ITS_BACK)).gapMetres(), 1e-12);
        assertEquals(0.05, low.fit(tall, Stand.ON_ITS_SIDE).gapMetres(), 1e-12);
        // Every way of a cube is the same.
        EnumSet.allOf(Stand.class).forEach(stand -> assertEquals(0.05, new Hollow(0.4, 0.4, 0.4, 0.4).fit(OuterShape.box(0.3, 0.3, 0.3), stand).gapMetres(), 1e-12));
    }

    @Test
    void anLStepsOverNothingButIsShallowAtTheTop() {
        OuterShape l = new OuterShape(Form.L, 0.5, 0.8, 0.38, 0.2, 0.1, 0);
        Hollow seat = new Hollow(0.7, 1.1, 0.45, 0.25);
        assertTrue(seat.gap(l, Stand.AS_DRAWN, Direction.DEPTH) > 0);
        assertTrue(seat.gap(OuterShape.box(0.5, 0.8, 0.38), Stand.AS_DRAWN, Direction.DEPTH) < 0);
        assertTrue(seat.gap(l, Stand.TURNED, Direction.DEPTH) < 0);
    }

    /** An L of two blocks, one on the other, fits where both blocks fit: each corner of each before the sloped back and below the top. */
    @Property
    void anLIsItsTwoBlocks(@ForAll @DoubleRange(min = 0.2, max = 0.6) double height, @ForAll @DoubleRange(min = 0.2, max = 0.6) double foot,
            @ForAll @DoubleRange(min = 0.1, max = 0.6) double top, @ForAll @DoubleRange(min = 0.05, max = 0.15) double step, @ForAll @DoubleRange(min = 0.15, max = 0.45) double back,
            @ForAll Stand stand) {
        OuterShape l = new OuterShape(Form.L, height, 0.8, foot, top, step, 0);
        Hollow hollow = new Hollow(0.55, 0.9, 0.45, back);
        double deepest = Math.max(foot, top);
        // Front, back, floor and top of each block as drawn.
        double[][] blocks = {{0, foot, 0, step}, {0, top, step, height}};
        boolean fits = true;
        for (double[] block : blocks) {
            double[] turned = switch (stand) {
                case AS_DRAWN -> block;
                case TURNED -> new double[] {deepest - block[1], deepest - block[0], block[2], block[3]};
                case UPSIDE_DOWN -> new double[] {block[0], block[1], height - block[3], height - block[2]};
                case ON_ITS_BACK -> new double[] {block[2], block[3], deepest - block[1], deepest - block[0]};
                case ON_ITS_SIDE -> new double[] {0, deepest, 0, 0.8};
            };
            boolean front = turned[0] >= 0;
            // A straight back comes nearest at one end of a block's height.
            double free = 0.45 - (0.45 - back) / 0.55 * (back < 0.45 ? turned[3] : turned[2]);
            fits &= front && turned[1] <= free && turned[3] <= 0.55;
        }
        fits &= (stand == Stand.ON_ITS_SIDE ? height : 0.8) <= 0.9;
        assertEquals(fits, hollow.fit(l, stand).gapMetres() >= 0);
    }

    /** The wall at the step of an L belongs to the deeper block: upside down it holds as much. */
    @Test
    void anLHoldsTheSameUpsideDown() {
        OuterShape l = new OuterShape(Form.L, 0.4, 1.04, 0.5, 0.2, 0.15, 0);
        OuterShape turned = new OuterShape(Form.L, 0.4, 1.04, 0.2, 0.5, 0.25, 0);
        assertEquals(l.innerCubicMetres(0.018), turned.innerCubicMetres(0.018), 1e-12);
    }

    @Test
    void aPairNeedsTheWidthOfBothAndPassesOneByOne() {
        OuterShape pair = new OuterShape(Form.PAIR, 0.3, 0.4, 0.3, 0.3, 0, 0.1);
        assertEquals((1.0 - 0.9) / 2, new Hollow(0.5, 1.0, 0.5, 0.5).gap(pair, Stand.AS_DRAWN, Direction.WIDTH), 1e-12);
        assertEquals((0.32 - 0.3) / 2, pair.wayInGapMetres(0.32, 0.9), 1e-12);
        assertEquals((0.5 - 0.4) / 2, OuterShape.box(0.3, 0.4, 1.0).wayInGapMetres(0.5, 0.5), 1e-12);
    }
}
