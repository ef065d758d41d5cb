package bayproof.review;

import bayproof.vocabulary.Knob;

/**
 * How to put a broken rule right.
 *
 * @param say   sentence in bay words
 * @param knob  the planned value to change; null where no single value decides
 * @param value the nearest value that makes the rule hold, as written in the file; null with the knob
 */
public record Remedy(String say, Knob knob, String value) {
}
