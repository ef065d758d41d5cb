package bayproof.read;

import bayproof.units.Dimension;
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
                   @Field(key = "waivers", says = "file of the waivers") Shown<String> waivers,
                   @Field(key = "runs", says = "the planned runs") Map<String, Run> runs,
                   @Field(key = "speaker-wiring", says = "how voice coils hang on amplifier outputs") Map<String, Wiring> speakerWiring,
                   @Field(key = "settings", says = "what is set at outputs") Map<String, Setting> settings,
                   @Field(key = "pins", says = "pins of factory connectors that the job uses") Map<String, PinUse> pins,
                   @Field(key = "steps", says = "the order of work") Map<String, Step> steps,
                   @Field(key = "found", says = "what was found in the vehicle; nothing is none") Shown<Map<String, Found>> found,
                   @Field(key = "looked", says = "the look for old wiring and devices") Look looked,
                   @Field(key = "owned-by", says = "whose vehicle it is") Ownership ownedBy,
                   @Field(key = "kept-parts", says = "factory parts taken off for good; none is none") Shown<Map<String, KeptPart>> keptParts,
                   @Field(key = "audio-inputs", says = "which factory outputs feed which input") Map<String, AudioInput> audioInputs,
                   @Field(key = "cabin-sound-work", says = "what becomes of the sounds the vehicle itself makes") CabinSoundWork cabinSoundWork,
                   @Field(key = "buses", says = "data buses the job joins; none is none") Shown<Map<String, BusUse>> buses,
                   @Field(key = "signal-ground", says = "where the signal ground of the audio chain meets the body") Shown<String> signalGround,
                   @Field(key = "parked", says = "time the vehicle is to stand and still start", in = Dimension.TIME) Shown<Double> parkedSeconds,
                   @Field(key = "wishes", says = "what the customer wished") Map<String, Wish> wishes,
                   @Field(key = "inspections", says = "looks at the work, each by the name of the rule it answers") Map<String, Inspection> inspections,
                   @Field(key = "check-in", says = "the vehicle as it came") CheckIn checkIn,
                   @Field(key = "functions", says = "functions of the vehicle, before and after") Map<String, FactoryFunction> functions,
                   @Field(key = "visits", says = "visits of the vehicle") Map<String, Visit> visits,
                   @Field(key = "sleep", says = "the sleep test of the finished vehicle") SleepTest sleep,
                   @Field(key = "heat-soak", says = "the heat soak of the finished vehicle") HeatSoak heatSoak,
                   @Field(key = "road-test", says = "the drive with the audio on before the vehicle goes back") RoadTest roadTest,
                   @Field(key = "listening", says = "what was listened for") Listening listening,
                   @Field(key = "delivered", says = "the vehicle as it goes back, and what goes with it") Delivered delivered,
                   @Field(key = "colors", says = "colors of the cables that the job brings") Shown<List<String>> colors,
                   @Field(key = "shop-tools", says = "tools at hand") Shown<List<String>> shopTools,
                   @Field(key = "calibrated-until", says = "day until which the calibration of this tool holds, year-month-day")
                   Map<String, Shown<String>> calibratedUntil) {

    /** The visit that ends last: by its day, then by its place in the plan; null where none is written. */
    public Visit lastVisit() {
        Visit last = null;
        for (Visit visit : visits.values()) {
            if (last == null || visit.date().orElse("").compareTo(last.date().orElse("")) >= 0) {
                last = visit;
            }
        }
        return last;
    }

    /** One step of the work. */
    public record Step(String id, String path, At at,
                       @Field(key = "do", says = "what the step does", words = {"photograph", "disconnect-battery", "wait-restraints",
                           "unplug-restraints", "reconnect-restraints", "reconnect-battery", "teardown", "run-cables", "fit", "ground",
                           "join-pins", "first-power", "function-test", "drive-test", "close-trim", "tune", "sleep-test", "handover"})
                       Shown<String> does,
                       @Field(key = "after", says = "steps that come before this one; none is []") Shown<List<String>> after,
                       @Field(key = "hours", says = "hours planned", in = Dimension.TIME) Shown<Double> seconds,
                       @Field(key = "sound-level", says = "sound level during the step, A-weighted", in = Dimension.LEVEL, zero = true)
                       Shown<Double> soundLevel,
                       @Field(key = "needs", says = "items on hand when the step begins; none is []") Shown<List<String>> needs,
                       @Field(key = "tools", says = "tools the step takes; none is []") Shown<List<String>> tools,
                       @Field(key = "removes", says = "factory parts the step takes off for good; none is []") Shown<List<String>> removes,
                       @Field(key = "engine-speeds", says = "number of engine speeds the drive is done at, audio off") Shown<Integer> engineSpeeds,
                       @Field(key = "negative-post", says = "whether the negative post is the first one off, or the last one on", words = {"first",
                           "last"}) Shown<String> negativePost,
                       @Field(key = "waited", says = "time that was really waited", in = Dimension.TIME) Shown<Double> waitedSeconds,
                       @Field(key = "fuse", says = "rating of the fuse that the first power comes through", in = Dimension.CURRENT)
                       Shown<Double> fuseAmperes,
                       @Field(key = "done", says = "that the step was done") Vouched done) {
    }

    /** Something found in the vehicle. */
    public record Found(String id, String path, At at,
                        @Field(key = "what", says = "what it is") Shown<String> what,
                        @Field(key = "state", says = "whether it is live", words = {"live", "dead"}) Shown<String> state,
                        @Field(key = "fused", says = "whether a fuse guards it at its source", words = {"yes", "no"}) Shown<String> fused,
                        @Field(key = "when", says = "when it was found") Shown<String> when,
                        @Field(key = "agreed", says = "that the customer agreed to what becomes of it") Vouched agreed,
                        @Field(key = "belongs-to", says = "whose it is") Shown<String> belongsTo,
                        @Field(key = "told", says = "that the owner was told of it") Vouched told,
                        @Field(key = "decision", says = "what becomes of it", words = {"keep", "remove", "make-safe", "leave-and-note"})
                        Shown<String> decision) {
    }

    /** Something the customer wished. */
    public record Wish(String id, String path, At at,
                       @Field(key = "want", says = "what the customer wishes, in their words; nothing is none") Shown<String> want,
                       @Field(key = "checked-by", says = "what checks the wish; until then nobody will check this", words = {"rule", "reading",
                           "signature", "nobody"}) Shown<String> checkedBy,
                       @Field(key = "with", says = "rule, instrument or person that checks the wish") Shown<String> with,
                       @Field(key = "kept", says = "what became of the wish", words = {"met", "changed-with-consent", "not-met"})
                       Shown<String> kept) {
    }

    /** Who looked for what earlier owners and shops left in the vehicle. */
    public record Look(String path, At at,
                       @Field(key = "who", says = "who looked") Shown<String> who,
                       @Field(key = "when", says = "when it was looked") Shown<String> when,
                       @Field(key = "where", says = "parts of the vehicle that were looked into") Shown<List<String>> where) {
    }

    /** A factory part that the job takes off and that somebody keeps. */
    public record KeptPart(String id, String path, At at,
                           @Field(key = "lies", says = "where it lies, as one would tell a colleague") Shown<String> lies,
                           @Field(key = "with", says = "who has it", words = {"shop", "customer", "vehicle", "scrapped"}) Shown<String> with) {
    }

    /** A data bus that the job joins. */
    public record BusUse(String id, String path, At at,
                         @Field(key = "by", says = "item that joins the bus") Shown<String> by,
                         @Field(key = "stub", says = "length of the stub to the bus", in = Dimension.LENGTH) Shown<Double> stubMetres) {
    }

    /** What stands at the head of every report. */
    public record Head(@Field(key = "tag", says = "work-order or key tag") Shown<String> tag,
                       @Field(key = "title", says = "title of the job") Shown<String> title,
                       @Field(key = "booked", says = "hours booked for the job", in = Dimension.TIME) Shown<Double> bookedSeconds,
                       @Field(key = "promised", says = "day or time the vehicle is promised back, year-month-day") Shown<String> promised,
                       @Field(key = "prepared-by", says = "who prepared the plan") Shown<String> preparedBy,
                       @Field(key = "date", says = "date of the plan") Shown<String> date) {
    }

    /** Voice coils on one amplifier output. */
    public record Wiring(String id, String path, At at,
                         @Field(key = "net", says = "how the coils are joined: + in series, | in parallel") Shown<String> net,
                         @Field(key = "resistance", says = "resistance across the wires at the amplifier, plug off", in = Dimension.RESISTANCE, zero = true)
                         Shown<Double> readOhms,
                         @Field(key = "to-body", says = "least resistance from either wire to the body, plug off", in = Dimension.RESISTANCE, zero = true)
                         Shown<Double> toBodyOhms,
                         @Field(key = "dc", says = "DC volts at the output before a speaker hangs on it", in = Dimension.VOLTAGE, zero = true)
                         Shown<Double> directVolts,
                         @Field(key = "polarity", says = "how the leads are joined to the marks of speaker and output", words = {"as-marked", "reversed"})
                         Shown<String> polarity,
                         @Field(key = "guard", says = "what guards a tweeter on it while settings are made", words = {"capacitor", "unplugged", "none"})
                         Shown<String> guard) {
    }

    /** One pin of a factory connector that the job joins. */
    public record PinUse(String id, String path, At at,
                         @Field(key = "function", says = "function of the pin", words = {"constant-supply", "switched-supply", "ground",
                             "illumination", "turn-on", "speaker", "can-high", "can-low", "lin"}) Shown<String> function,
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
