package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;

/** What of an enclosure is air, and how it breathes. */
public record BoxAir(@Field(key = "type", says = "whether the enclosure is closed or vented", words = {"closed", "vented"}) Shown<String> type,
                     @Field(key = "bracing", says = "room that braces and all else inside but speakers and port take", in = Dimension.VOLUME, zero = true)
                     Shown<Double> bracingCubicMetres,
                     @Field(key = "filling", says = "whether it is filled with damping material", words = {"none", "filled"}) Shown<String> filling,
                     @Field(key = "tuning", says = "tuning that is wanted of a vented enclosure", in = Dimension.FREQUENCY) Shown<Double> tuningHertz) {
}
