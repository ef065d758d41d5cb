package bayproof.read;

import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;

/** What somebody vouches for, with the three things that make it count. A bare {@code true} says none of them. */
public record Vouched(@Field(key = "who", says = "who says so") Shown<String> who,
                      @Field(key = "when", says = "when it was said") Shown<String> when,
                      @Field(key = "evidence", says = "where it stands: a letter, a signed form, a photo") Shown<String> evidence) {

    /** The three together; missing while one is. */
    public Shown<Attestation> word() {
        return who.with(when, (name, day) -> new String[] {name, day}).with(evidence, (said, proof) -> new Attestation(said[0], said[1], proof));
    }
}
