package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;

/** What the fuses of a holder or block are made to interrupt. */
public record FuseMake(@Field(key = "fuse-volts", says = "volts that its fuses are rated for", in = Dimension.VOLTAGE) Shown<Double> ratedVolts,
                       @Field(key = "breaks", says = "largest fault current that its fuses can interrupt", in = Dimension.CURRENT)
                       Shown<Double> breakingAmperes) {
}
