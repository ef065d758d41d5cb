package bayproof.read;

import bayproof.vocabulary.Shown;
import java.util.Map;

/** What a cable's terminal meets at an item. */
public record Studs(@Field(key = "stud", says = "thread of the stud or screw at its terminals; plug for a plug", words = {"M4", "M5", "M6",
                        "M8", "M10", "plug", "clamp"}) Shown<String> each,
                    @Field(key = "studs", says = "the same at this terminal, where it differs", words = {"M4", "M5", "M6", "M8", "M10", "plug",
                        "clamp"}) Map<String, Shown<String>> at) {

    /** What a cable meets at a terminal. */
    public Shown<String> of(String terminal) {
        return at.getOrDefault(terminal, each);
    }
}
