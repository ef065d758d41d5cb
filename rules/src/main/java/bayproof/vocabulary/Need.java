package bayproof.vocabulary;

/**
 * A fact that nobody gave and that a verdict waits for.
 *
 * @param path path of keys where it would stand, such as {@code runs.feed-1.length}
 * @param ask  what to find out, as a short phrase
 * @param at   where it would stand
 */
public record Need(String path, String ask, At at) {
}
