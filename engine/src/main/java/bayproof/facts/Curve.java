package bayproof.facts;

import java.util.List;

/**
 * One picture of a quantity over another, as lines of points.
 *
 * @param name        its name, fit for a file
 * @param title       what it shows
 * @param across      what runs across, with its unit
 * @param up          what runs up, with its unit
 * @param logarithmic whether what runs across is drawn by its logarithm
 * @param least       lowest value drawn upward; NaN for the least there is
 * @param lines       the lines
 */
public record Curve(String name, String title, String across, String up, boolean logarithmic, double least, List<Line> lines) {
    /**
     * One line.
     *
     * @param name  what it is
     * @param total whether it is what all others come to
     * @param x     values across, growing
     * @param y     values upward
     */
    public record Line(String name, boolean total, List<Double> x, List<Double> y) {
        public Line {
            x = List.copyOf(x);
            y = List.copyOf(y);
        }
    }

    public Curve {
        lines = List.copyOf(lines);
    }
}
