package bayproof.read;

import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;

/** How the values of a group were taken, where one word stands for all of them. */
public record Taking(@Field(key = "instrument", says = "the instrument used") Shown<String> instrument,
                     @Field(key = "who", says = "who took the readings") Shown<String> who,
                     @Field(key = "when", says = "date and time of the readings") Shown<String> when) {

    /** Who measured, when and with what; missing while one of them is. */
    public Shown<Attestation> word() {
        return new Vouched(who, when, instrument).word();
    }
}
