package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;

/** A conductor or cable from terminal to terminal, as planned or as the vehicle maker laid it. */
public record Run(String id, String path, At at,
                  @Field(key = "from", says = "terminal the run begins at") Shown<String> from,
                  @Field(key = "to", says = "terminal the run ends at") Shown<String> to,
                  @Field(key = "size", says = "cable size, from strand count and strand diameter", size = true) Shown<String> size,
                  @Field(key = "length", says = "length of the run, as cut or by a string along its way", in = Dimension.LENGTH)
                  Shown<Double> lengthMetres,
                  @Field(key = "metal", says = "metal of the conductor: scrape a cut end", words = {"copper", "clad-10", "clad-15"})
                  Shown<String> metal,
                  @Field(key = "insulation", says = "temperature class printed on the insulation; no-print if there is none")
                  Shown<String> insulation,
                  @Field(key = "color", says = "color of the cable") Shown<String> color,
                  @Field(key = "cover", says = "what covers the run", words = {"none", "split-tube", "closed-tube", "braid", "tape"})
                  Shown<String> cover,
                  @Field(key = "splices", says = "number of splices in the run; none is 0") Shown<Integer> splices,
                  @Field(key = "along", says = "routes the run follows") Shown<List<String>> along,
                  @Field(key = "through", says = "pass-throughs the run goes through") Shown<List<String>> through,
                  @Field(key = "ends", says = "how the ends are made") Ends ends,
                  @Field(key = "label", says = "where the run carries its id", words = {"both-ends", "one-end", "none"}) Shown<String> label,
                  @Field(key = "support", says = "largest distance between supports along the run", in = Dimension.LENGTH)
                  Shown<Double> supportMetres,
                  @Field(key = "diameter", says = "outer diameter of the cable", in = Dimension.LENGTH) Shown<Double> diameterMetres,
                  @Field(key = "bend", says = "tightest bend of the run, inner radius", in = Dimension.LENGTH) Shown<Double> bendMetres,
                  @Field(key = "slack", says = "spare length where the run crosses a hinge or reaches a seat", in = Dimension.LENGTH, zero = true)
                  Shown<Double> slackMetres,
                  @Field(key = "near", says = "clear distance to this keep-out", in = Dimension.LENGTH, zero = true)
                  Map<String, Shown<Double>> near,
                  @Field(key = "tied-to", says = "what the run is tied to besides the body; nothing is none", words = {"none", "factory-harness",
                      "restraint-harness", "fuel-line", "brake-line", "steering"}) Shown<String> tiedTo,
                  @Field(key = "shield", says = "ends at which the shield is grounded; neither is []") Shown<List<String>> shield,
                  @Field(key = "unfinished", says = "how the run was left unfinished") Left left) {

    /** A run that is not finished when the vehicle leaves. */
    public record Left(@Field(key = "fuse", says = "whether its fuse is in or out", words = {"out", "in"}) Shown<String> fuse,
                       @Field(key = "end", says = "what became of its open end", words = {"capped", "bare"}) Shown<String> end,
                       @Field(key = "tag", says = "whether it carries a tag", words = {"tagged", "none"}) Shown<String> tag,
                       @Field(key = "who", says = "who left it so") Shown<String> who,
                       @Field(key = "when", says = "when it was left so") Shown<String> when,
                       @Field(key = "evidence", says = "what shows it, such as a photo by number") Shown<String> evidence) {
        public Shown<Attestation> word() {
            return new Vouched(who, when, evidence).word();
        }
    }

    /** Both ends of a run. */
    public record Ends(@Field(key = "from", says = "how the first end is made") End from,
                       @Field(key = "to", says = "how the last end is made") End to) {
    }

    /** One end of a run. */
    public record End(String path, At at,
                      @Field(key = "terminal", says = "terminal on this end") Shown<String> terminal,
                      @Field(key = "takes", says = "cable size the terminal is made for", size = true) Shown<String> takes,
                      @Field(key = "metals", says = "metals the terminal is rated for") Shown<List<String>> metals,
                      @Field(key = "method", says = "how the conductor is joined to the terminal", words = {"hex-crimp", "indent-crimp",
                          "set-screw", "solder", "twist-on", "piercing", "pliers"}) Shown<String> method,
                      @Field(key = "tool", says = "tool from the shop's list") Shown<String> tool) {
    }
}
