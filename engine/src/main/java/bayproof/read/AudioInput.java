package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;

/** One channel of sound taken from the factory system: the outputs it is made of and what it is used as. */
public record AudioInput(String id, String path, At at,
                         @Field(key = "of", says = "audio outputs of the vehicle sheet; several are summed") Shown<List<String>> of,
                         @Field(key = "expects", says = "part of the band that is made of it", words = {"full", "low", "high"}) Shown<String> expects,
                         @Field(key = "corrected-by", says = "processor that makes a shaped signal flat again") Shown<String> correctedBy,
                         @Field(key = "sum-gain", says = "gain that this output is summed with", in = Dimension.LEVEL, zero = true) Map<String, Shown<Double>> sumGains,
                         @Field(key = "settings-made-on", says = "signal that the settings were made on: this one, or a flat or shaped one elsewhere",
                                words = {"this-output", "flat", "shaped"}) Shown<String> settingsMadeOn,
                         @Field(key = "set-at-volume", says = "volume of the radio at which the settings hold") Shown<String> setAtVolume) {
}
