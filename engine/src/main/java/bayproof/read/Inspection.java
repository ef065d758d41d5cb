package bayproof.read;

import bayproof.units.Quantity;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;
import java.util.List;

/** One look at everything of a kind in the job, for one thing at a time; its name is that of the rule it answers. */
public record Inspection(String id, String path, At at,
                         @Field(key = "who", says = "who looked") Shown<String> who,
                         @Field(key = "when", says = "when it was looked at") Shown<String> when,
                         @Field(key = "evidence", says = "what shows it: photos by number, a pull gauge, a lamp and a mirror")
                         Shown<String> evidence,
                         @Field(key = "faults", says = "what was found wrong, by its names in the plan; none is []")
                         Shown<List<String>> faults,
                         @Field(key = "left-out", says = "what could not be looked at, by its names in the plan; none is []")
                         Shown<List<String>> leftOut,
                         @Field(key = "measured", says = "the worst that was measured of all of them, for a look that takes a measure", zero = true)
                         Shown<Quantity> measured) {

    /** The word of who looked; missing while any part of it is. */
    public Shown<Attestation> word() {
        return new Vouched(who, when, evidence).word();
    }
}
