package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;

/** One visit of the vehicle. */
public record Visit(String id, String path, At at,
                    @Field(key = "date", says = "day of the visit, year-month-day") Shown<String> date,
                    @Field(key = "reason", says = "why it came", words = {"planned", "comeback", "retune"}) Shown<String> reason,
                    @Field(key = "done", says = "steps done during the visit; none is []") Shown<List<String>> done,
                    @Field(key = "words", says = "what the customer said, in their words") Shown<String> words,
                    @Field(key = "cause", says = "what was found to be the cause") Shown<String> cause,
                    @Field(key = "hours", says = "hours it took", in = Dimension.TIME) Shown<Double> seconds,
                    @Field(key = "rule", says = "the rule it belongs to, or none") Shown<String> rule,
                    @Field(key = "unfinished", says = "runs left unfinished at its end; none is none") Shown<List<String>> unfinished) {
}
