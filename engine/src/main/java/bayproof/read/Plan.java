package bayproof.read;

import bayproof.units.Quantity;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;

/** What will be installed, as the plan file says it. Items are bound apart, because a part stands behind them. */
public record Plan(@Field(key = "job", says = "the job") Head job,
                   @Field(key = "vehicle", says = "file of the vehicle sheet") Shown<String> vehicle,
                   @Field(key = "parts", says = "files of the parts books") Shown<List<String>> parts,
                   @Field(key = "readings", says = "file of the readings") Shown<String> readings,
                   @Field(key = "limits", says = "file of the shop limits") Shown<String> limits,
                   @Field(key = "runs", says = "the planned runs") Map<String, Run> runs,
                   @Field(key = "speaker-wiring", says = "how voice coils hang on amplifier outputs") Map<String, Wiring> speakerWiring,
                   @Field(key = "pins", says = "pins of factory connectors that the job uses") Map<String, PinUse> pins) {

    /** What stands at the head of every report. */
    public record Head(@Field(key = "tag", says = "work-order or key tag") Shown<String> tag,
                       @Field(key = "title", says = "title of the job") Shown<String> title,
                       @Field(key = "prepared-by", says = "who prepared the plan") Shown<String> preparedBy,
                       @Field(key = "date", says = "date of the plan") Shown<String> date) {
    }

    /** Voice coils on one amplifier output. */
    public record Wiring(String id, String path, At at,
                         @Field(key = "net", says = "how the coils are joined: + in series, | in parallel") Shown<String> net) {
    }

    /** One pin of a factory connector that the job joins. */
    public record PinUse(String id, String path, At at,
                         @Field(key = "function", says = "function of the pin", words = {"constant-supply", "switched-supply", "ground",
                             "illumination", "turn-on", "speaker"}) Shown<String> function,
                         @Field(key = "color", says = "color of the factory wire as seen") Shown<String> color,
                         @Field(key = "connected-to", says = "terminal the pin is joined to") Shown<String> connectedTo,
                         @Field(key = "method", says = "how the pin is joined", words = {"plug-in-harness", "tap-crimp", "tap-solder",
                             "cut-and-join"}) Shown<String> method,
                         @Field(key = "identified", says = "how the pin was proved") Identified identified) {
    }

    /** How a pin was proved before anything joins it. */
    public record Identified(@Field(key = "by", says = "instrument the pin was proved with", words = {"meter", "oscilloscope", "test-lamp",
                                 "document", "color"}) Shown<String> by,
                             @Field(key = "who", says = "who proved the pin") Shown<String> who,
                             @Field(key = "when", says = "when the pin was proved") Shown<String> when,
                             @Field(key = "state", says = "state the vehicle was in", words = {"asleep", "ignition-on", "supply-off",
                                 "lamps-on", "radio-on"}) Shown<String> state,
                             @Field(key = "reading", says = "what the instrument read") Shown<Quantity> reading) {
    }
}
