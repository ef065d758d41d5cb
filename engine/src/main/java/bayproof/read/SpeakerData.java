package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.util.Map;

/** What a speaker's data sheet says beside the impedance of its coils. */
public record SpeakerData(@Field(key = "plays", says = "what part of the sound it plays", words = {"tweeter", "midrange", "woofer", "full-range",
                              "subwoofer"}) Shown<String> plays,
                          @Field(key = "dc-resistance", says = "DC resistance of this voice coil", in = Dimension.RESISTANCE)
                          Map<String, Shown<Double>> directOhms,
                          @Field(key = "rated-power", says = "power the whole speaker is rated for, continuous", in = Dimension.POWER)
                          Shown<Double> ratedWatts,
                          @Field(key = "lowest-crossover", says = "lowest high-pass corner its data sheet allows", in = Dimension.FREQUENCY)
                          Shown<Double> lowestCrossoverHertz,
                          @Field(key = "capacitor", says = "capacitor in series with the speaker", in = Dimension.CAPACITANCE)
                          Shown<Double> capacitorFarads,
                          @Field(key = "water-resistant", says = "whether its data sheet allows water on it", words = {"yes", "no"})
                          Shown<String> waterResistant) {
}
