package bayproof.read;

import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;

/** The sounds that the vehicle itself makes or cancels. */
public record CabinSound(String path, At at,
                         @Field(key = "cancels-noise", says = "whether the vehicle cancels engine noise through its speakers") Shown<Boolean> cancelsNoise,
                         @Field(key = "adds-engine-sound", says = "whether the vehicle plays engine sound through its speakers") Shown<Boolean> addsEngineSound,
                         @Field(key = "pedestrian-sound", says = "whether the vehicle warns people on foot by a sound") Shown<Boolean> pedestrianSound,
                         @Field(key = "microphones", says = "places of the cabin microphones; none is []") Shown<List<String>> microphones,
                         @Field(key = "played-by", says = "what plays these sounds", words = {"nothing", "radio", "factory-amplifier", "own-unit"})
                         Shown<String> playedBy) {
}
