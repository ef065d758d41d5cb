package bayproof.demand;

import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;

/** One part of a demand; the parts are joined by "and". */
public sealed interface Part {
    /** What is looked at, as a noun phrase. */
    String what();

    /** A number held against a bound. */
    record Numeric(String what, Shown<Double> value, Limit.Kind sense, Bound bound) implements Part {
    }

    /** A word that must be, or must not be, one of a named list. */
    record Worded(String what, Shown<String> value, String list) implements Part {
    }

    /** A statement that must be true. */
    record True(String what, Shown<Boolean> value, Shown<String> seen) implements Part {
    }

    /** A thing that must be there at all. */
    record Present(String what, Shown<?> value) implements Part {
    }

    /** A thing somebody must vouch for, with who, when and how. */
    record Attested(String what, Shown<Attestation> value) implements Part {
    }
}
