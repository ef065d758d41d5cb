package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;

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
                  @Field(key = "cover", says = "what covers the run", words = {"none", "split-tube", "closed-tube", "braid", "tape"})
                  Shown<String> cover,
                  @Field(key = "along", says = "routes the run follows") Shown<List<String>> along,
                  @Field(key = "through", says = "pass-throughs the run goes through") Shown<List<String>> through) {
}
