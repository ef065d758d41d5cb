package bayproof.read;

import bayproof.vocabulary.Shown;

/** Where a group of values was seen; what it does not say, the vehicle sheet says for all. */
public record Seen(@Field(key = "seen-on", says = "where this was seen", words = {"this-car", "same-variant", "document"})
                   Shown<String> on) {
}
