package bayproof.read;

import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** What becomes of the sounds that the vehicle itself makes or cancels. */
public record CabinSoundWork(String path, At at,
                             @Field(key = "decision", says = "what becomes of noise cancelling and engine sound", words = {"kept",
                                 "switched-off-by-maker-procedure", "fed-from-factory-speakers"}) Shown<String> decision,
                             @Field(key = "decided", says = "who decided that") Vouched decided,
                             @Field(key = "pedestrian-sound", says = "what becomes of the sound for people on foot", words = {"untouched", "moved",
                                 "disconnected"}) Shown<String> pedestrianSound) {
}
