package bayproof.facts;

import java.util.List;
import java.util.Set;

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
     * @param marked values across that carry a mark, where not all may
     */
    public record Line(String name, boolean total, List<Double> x, List<Double> y, Set<Double> marked) {
        public Line {
            x = List.copyOf(x);
            y = List.copyOf(y);
            marked = Set.copyOf(marked);
        }
    }

    public Curve {
        lines = List.copyOf(lines);
    }
}
