package bayproof.vocabulary;

import java.util.List;

/**
 * A value that nobody gave and that is taken as lying between two ends.
 *
 * @param path  path of the value that would replace the window; of several values their common group
 * @param paths paths of all values that it stands for
 * @param limit name of the limit that gives the window
 * @param low   lower end, in the unit of the limit (SI)
 * @param high  upper end, in the unit of the limit (SI)
 * @param weighs how far this window alone moves the value in question, in that value's unit; 0 when not worked out
 */
public record Window(String path, List<String> paths, String limit, double low, double high, double weighs) {
    public Window {
        paths = List.copyOf(paths);
    }

    /** A window that stands for one value. */
    public Window(String path, String limit, double low, double high, double weighs) {
        this(path, List.of(path), limit, low, high, weighs);
    }

    public Window weighing(double difference) {
        return new Window(path, paths, limit, low, high, difference);
    }
}
