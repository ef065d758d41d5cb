package bayproof.splice;

import bayproof.vocabulary.At;

/**
 * One answer of a filled form.
 *
 * @param path path of the fact
 * @param text what was written
 * @param at   where it stands in the form
 */
public record Answer(String path, String text, At at) {
}
