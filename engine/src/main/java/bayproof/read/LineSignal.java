package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;

/** The signal of what stands between a source and an amplifier. */
public record LineSignal(@Field(key = "input-most", says = "greatest clean volts at a signal input", in = Dimension.VOLTAGE) Shown<Double> mostInputVolts,
                         @Field(key = "signal-volts", says = "greatest clean volts at a signal output", in = Dimension.VOLTAGE)
                         Shown<Double> outputVolts) {
}
