package bayproof.read;

import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;
import java.util.List;

/** What was listened for before the keys go back. */
public record Listening(String path, At at,
                        @Field(key = "whine", says = "whine with the engine's speed") Heard whine,
                        @Field(key = "hiss", says = "hiss with nothing playing") Heard hiss,
                        @Field(key = "thump", says = "thump when switched on or off") Heard thump,
                        @Field(key = "echo", says = "echo of a caller's own voice") Heard echo,
                        @Field(key = "rattle", says = "rattle at a low tone") Heard rattle) {

    /** One of them. */
    public record Heard(String path, At at,
                        @Field(key = "result", says = "what was heard", words = {"not-heard", "heard"}) Shown<String> result,
                        @Field(key = "state", says = "state of the vehicle while listening", words = {"engine-off", "idle", "engine-revved", "driving"})
                        Shown<String> state,
                        @Field(key = "volume", says = "volume step while listening") Shown<String> volume,
                        @Field(key = "who", says = "who listened") Shown<String> who,
                        @Field(key = "when", says = "when it was listened for") Shown<String> when) {

        /** Who listened, when, and in which state at which volume. */
        public Shown<Attestation> word() {
            return new Vouched(who, when, state.with(volume, (how, loud) -> how.replace('-', ' ') + ", volume " + loud)).word();
        }
    }

    /** All five, in their order. */
    public List<Heard> all() {
        return List.of(whine, hiss, thump, echo, rattle);
    }
}
