package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;
import java.util.List;

/** The vehicle as it came. */
public record CheckIn(String path, At at,
                      @Field(key = "who", says = "who checked the vehicle in") Shown<String> who,
                      @Field(key = "when", says = "when it was checked in") Shown<String> when,
                      @Field(key = "photos", says = "numbers of the photos of the vehicle as it came, body and interior") Shown<List<String>> photos,
                      @Field(key = "labels", says = "labels that were photographed: door-plate, radio, option-list") Shown<List<String>> labels,
                      @Field(key = "keys", says = "keys and codes in hand, as one would tell a colleague") Shown<String> keys,
                      @Field(key = "fault-codes", says = "fault codes stored before the job; none is []") Shown<List<String>> faultCodes,
                      @Field(key = "lamps", says = "warning lamps that stay lit before the job; none is []") Shown<List<String>> lamps,
                      @Field(key = "floor", says = "how the floor felt under the mats", words = {"dry", "wet"}) Shown<String> floor,
                      @Field(key = "battery", says = "battery volts when it came, at rest", in = Dimension.VOLTAGE) Shown<Double> batteryVolts,
                      @Field(key = "signed", says = "the customer's word that this is the state") Vouched signed) {

    /** The word of who checked it in, for what stands on the same sheet. */
    public Shown<Attestation> word(String sheet) {
        return new Vouched(who, when, Shown.of(sheet)).word();
    }
}
