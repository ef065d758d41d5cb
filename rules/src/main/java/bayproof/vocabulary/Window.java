package bayproof.vocabulary;

/**
 * A value that nobody gave and that is taken as lying between two ends.
 *
 * @param path  path of the value that would replace the window
 * @param limit name of the limit that gives the window
 * @param low   lower end, in the unit of the limit (SI)
 * @param high  upper end, in the unit of the limit (SI)
 * @param weighs how far this window alone moves the value in question, in that value's unit; 0 when not worked out
 */
public record Window(String path, String limit, double low, double high, double weighs) {
    public Window weighing(double difference) {
        return new Window(path, limit, low, high, difference);
    }
}
