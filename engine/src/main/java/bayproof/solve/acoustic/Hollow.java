package bayproof.solve.acoustic;

import bayproof.solve.acoustic.OuterShape.Corner;
import bayproof.solve.acoustic.OuterShape.Stand;
import java.util.Collection;

/**
 * A space of a vehicle in one position of seats and lids. Its back may slope, as a seat's does; front, floor and sides are square.
 *
 * @param heightMetres clear height
 * @param widthMetres  clear width
 * @param depthMetres  clear depth at the floor
 * @param topMetres    clear depth at the top
 */
public record Hollow(double heightMetres, double widthMetres, double depthMetres, double topMetres) {
    /** Directions in which something can be too large. */
    public enum Direction { HEIGHT, WIDTH, DEPTH }

    /**
     * How something fits.
     *
     * @param stand     how it stands
     * @param direction where least room is left
     * @param gapMetres room on each side there; below 0 it does not fit
     */
    public record Fit(Stand stand, Direction direction, double gapMetres) {
    }

    /**
     * The best way a shape may stand.
     *
     * @param stands ways it may stand, in order of preference
     * @throws IllegalArgumentException if there is none
     */
    public Fit best(OuterShape shape, Collection<Stand> stands) {
        Fit best = null;
        for (Stand stand : stands) {
            Fit fit = fit(shape, stand);
            if (best == null || fit.gapMetres() > best.gapMetres()) {
                best = fit;
            }
        }
        if (best == null) {
            throw new IllegalArgumentException("no way to stand");
        }
        return best;
    }

    /** How a shape fits that stands in one way. */
    public Fit fit(OuterShape shape, Stand stand) {
        Fit tightest = null;
        for (Direction direction : Direction.values()) {
            double gap = gap(shape, stand, direction);
            if (tightest == null || gap < tightest.gapMetres()) {
                tightest = new Fit(stand, direction, gap);
            }
        }
        return tightest;
    }

    /** Room on each side in one direction. */
    public double gap(OuterShape shape, Stand stand, Direction direction) {
        return switch (direction) {
            case HEIGHT -> (heightMetres - shape.standingHeight(stand)) / 2;
            case WIDTH -> (widthMetres - shape.standingWidth(stand)) / 2;
            case DEPTH -> depthGap(shape, stand);
        };
    }

    /** Standing on the floor, so placed that front and slanted back have the same room, each measured square to itself. */
    private double depthGap(OuterShape shape, Stand stand) {
        double slope = (depthMetres - topMetres) / heightMetres;
        double level = Double.POSITIVE_INFINITY;
        for (Corner corner : shape.profile(stand)) {
            level = Math.min(level, depthMetres - slope * corner.height() - corner.depth());
        }
        double cosine = 1 / Math.sqrt(1 + slope * slope);
        return level * cosine / (1 + cosine);
    }
}
