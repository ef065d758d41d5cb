package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;

/** What an audio output of the factory system gives; every figure is a measured one. */
public record AudioTable(@Field(key = "carries", says = "part of the band it carries", words = {"full", "low", "high"}) Shown<String> carries,
                         @Field(key = "polarity", says = "polarity against the other outputs", words = {"normal", "inverted"})
                         Shown<String> polarity,
                         @Field(key = "delay", says = "delay against the earliest output", in = Dimension.TIME, zero = true) Shown<Double> delaySeconds,
                         @Field(key = "quiet", says = "clean volts at the low volume step") Tones quiet,
                         @Field(key = "loud", says = "clean volts at the high volume step") Tones loud,
                         @Field(key = "shaped", says = "whether it is equalized or filtered") Shown<Boolean> shaped,
                         @Field(key = "limits-itself", says = "whether its bass gives way as the volume rises") Shown<Boolean> limitsItself,
                         @Field(key = "minimum-load", says = "least load the output is made for, where speakers hang on it", in = Dimension.RESISTANCE)
                         Shown<Double> minimumLoadOhms,
                         @Field(key = "expects-load", says = "load that the output looks for when it is switched on", in = Dimension.RESISTANCE)
                         Shown<Double> expectedLoadOhms) {

    /** Clean volts of one disc or file at one volume step. */
    public record Tones(@Field(key = "low-tone", says = "clean volts at 40 Hz", in = Dimension.VOLTAGE, zero = true) Shown<Double> lowVolts,
                        @Field(key = "mid-tone", says = "clean volts at 1 kHz", in = Dimension.VOLTAGE, zero = true) Shown<Double> midVolts,
                        @Field(key = "high-tone", says = "clean volts at 10 kHz", in = Dimension.VOLTAGE, zero = true) Shown<Double> highVolts) {
    }
}
