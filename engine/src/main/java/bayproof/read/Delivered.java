package bayproof.read;

import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;
import java.util.List;

/** The vehicle as it goes back, and what goes with it. */
public record Delivered(String path, At at,
                        @Field(key = "who", says = "who tried the vehicle before it went back") Shown<String> who,
                        @Field(key = "when", says = "when it was tried") Shown<String> when,
                        @Field(key = "fault-codes", says = "fault codes stored after the job; none is []") Shown<List<String>> faultCodes,
                        @Field(key = "lamps", says = "warning lamps that stay lit after the job; none is []") Shown<List<String>> lamps,
                        @Field(key = "drawing", says = "the drawing as built: sources, fuses, conductors, grounds, holes") Vouched drawing,
                        @Field(key = "settings", says = "the settings, as a file and printed") Vouched settings,
                        @Field(key = "photos", says = "photos of the finished work") Vouched photos,
                        @Field(key = "copies", says = "a copy each for customer and shop") Vouched copies,
                        @Field(key = "disposal", says = "what became of old batteries and electronics") Vouched disposal,
                        @Field(key = "told", says = "what the customer was told: isolation, changes, hearing, loudness") Shown<List<String>> told,
                        @Field(key = "warranty", says = "the shop's own term for parts and labor") Shown<String> warranty,
                        @Field(key = "warranty-paper", says = "what the papers say of the vehicle's own warranty",
                            words = {"nothing", "as-the-law-says", "void", "kept"}) Shown<String> warrantyPaper,
                        @Field(key = "signed", says = "the customer's signature at handover") Vouched signed) {

    /** The word of who tried it, for what stands on the same sheet. */
    public Shown<Attestation> word(String sheet) {
        return new Vouched(who, when, Shown.of(sheet)).word();
    }
}
