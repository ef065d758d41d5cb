package bayproof.solve.acoustic;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The outside of an enclosure: a profile of depth and height, drawn out over its width. A pair is two alike beside each other.
 *
 * @param form         its form
 * @param heightMetres height as drawn
 * @param widthMetres  width as drawn, of one of a pair
 * @param depthMetres  depth at its deepest, at the foot
 * @param topMetres    depth at the top: a wedge grows shallower evenly, an L at its step; as deep as the foot for a box
 * @param stepMetres   height of an L's step; not read otherwise
 * @param apartMetres  room between the boxes of a pair; not read otherwise
 */
public record OuterShape(Form form, double heightMetres, double widthMetres, double depthMetres, double topMetres, double stepMetres,
                         double apartMetres) {
    /** Forms an enclosure can have. */
    public enum Form { BOX, WEDGE, L, PAIR }

    /** How it may stand in its space. */
    public enum Stand { AS_DRAWN, TURNED, UPSIDE_DOWN, ON_ITS_BACK, ON_ITS_SIDE }

    /** A corner of the profile: depth from the front, height from the foot. */
    record Corner(double depth, double height) {
    }

    /** A plain box. */
    public static OuterShape box(double heightMetres, double widthMetres, double depthMetres) {
        return new OuterShape(Form.BOX, heightMetres, widthMetres, depthMetres, depthMetres, 0, 0);
    }

    private List<Corner> profile() {
        Corner front = new Corner(0, 0);
        Corner foot = new Corner(depthMetres, 0);
        Corner top = new Corner(topMetres, heightMetres);
        Corner frontTop = new Corner(0, heightMetres);
        return form == Form.L
                ? List.of(front, foot, new Corner(depthMetres, stepMetres), new Corner(topMetres, stepMetres), top, frontTop)
                : List.of(front, foot, top, frontTop);
    }

    /** The profile as it stands, from its lowest and frontmost point. */
    List<Corner> profile(Stand stand) {
        return switch (stand) {
            case AS_DRAWN -> profile();
            case TURNED -> profile().stream().map(one -> new Corner(deepest() - one.depth, one.height)).toList();
            case UPSIDE_DOWN -> profile().stream().map(one -> new Corner(one.depth, heightMetres - one.height)).toList();
            case ON_ITS_BACK -> profile().stream().map(one -> new Corner(one.height, deepest() - one.depth)).toList();
            // Drawn out upward, its profile lies flat: what counts is how deep it is anywhere.
            case ON_ITS_SIDE -> box(widthMetres, heightMetres, deepest()).profile();
        };
    }

    private double deepest() {
        return Math.max(depthMetres, topMetres);
    }

    /** Height as it stands. */
    double standingHeight(Stand stand) {
        return switch (stand) {
            case ON_ITS_BACK -> deepest();
            case ON_ITS_SIDE -> widthMetres;
            default -> heightMetres;
        };
    }

    /** Width as it stands, both of a pair with the room between. */
    double standingWidth(Stand stand) {
        double one = stand == Stand.ON_ITS_SIDE ? heightMetres : widthMetres;
        return form == Form.PAIR ? 2 * one + apartMetres : one;
    }

    /** Room inside walls of a thickness, both of a pair; below 0 never. */
    public double innerCubicMetres(double wallMetres) {
        double width = widthMetres - 2 * wallMetres;
        double height = heightMetres - 2 * wallMetres;
        double area = switch (form) {
            case BOX, PAIR -> (depthMetres - 2 * wallMetres) * height;
            case WEDGE -> {
                // The slanted wall is measured square to itself, so level it is thicker.
                double slope = (depthMetres - topMetres) / heightMetres;
                yield ((depthMetres + topMetres) / 2 - wallMetres * (1 + Math.sqrt(1 + slope * slope))) * height;
            }
            case L -> {
                // The wall at the step belongs to the deeper of the two blocks, whichever that is.
                double foot = topMetres > depthMetres ? stepMetres : stepMetres - 2 * wallMetres;
                yield (depthMetres - 2 * wallMetres) * foot + (topMetres - 2 * wallMetres) * (height - foot);
            }
        };
        return Math.max(0, area) * Math.max(0, width) * (form == Form.PAIR ? 2 : 1);
    }

    /**
     * Room on each side when it is carried straight through an opening, its two smaller sizes across it; below 0 it does not pass. Of a
     * pair one box after the other.
     */
    public double wayInGapMetres(double openingHeightMetres, double openingWidthMetres) {
        double[] sizes = DoubleStream.of(heightMetres, widthMetres, deepest()).sorted().toArray();
        return Math.min(Math.min(openingHeightMetres, openingWidthMetres) - sizes[0], Math.max(openingHeightMetres, openingWidthMetres) - sizes[1]) / 2;
    }
}
