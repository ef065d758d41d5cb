package bayproof.review;

/**
 * What one look is at.
 *
 * @param key  the same for every fact that the look answers
 * @param name what it is, for people
 * @param body where the body must be
 */
public record Thing(String key, String name, Body body) {
}
