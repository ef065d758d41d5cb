package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** The drive with the audio on before the vehicle goes back. */
public record RoadTest(String path, At at,
                       @Field(key = "time", says = "time that was driven with the audio on", in = Dimension.TIME) Shown<Double> seconds,
                       @Inline Vouched vouched) {
}
