package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.List;

/** What is set at one output of an amplifier or processor. */
public record Setting(String id, String path, At at,
                      @Field(key = "name", says = "name of the output on its label and in the device's own list") Shown<String> name,
                      @Field(key = "use", says = "whether a speaker hangs on the output or it is spare and muted", words = {"speaker", "spare-muted"})
                      Shown<String> use,
                      @Field(key = "gain", says = "how the gain is set") Gain gain,
                      @Field(key = "high-pass", says = "high-pass filter") Filter highPass,
                      @Field(key = "low-pass", says = "low-pass filter") Filter lowPass,
                      @Field(key = "filtered-before", says = "filters that the signal has passed before it comes here, as of a factory output already split")
                      Before before,
                      @Field(key = "band-above", says = "outputs that play the band above on the same side; none is []") Shown<List<String>> bandAbove,
                      @Field(key = "inputs", says = "channels of the factory sound that this output plays; none is []") Shown<List<String>> inputs,
                      @Field(key = "inverted", says = "whether the output is set to invert its signal") Shown<Boolean> inverted,
                      @Field(key = "delay", says = "delay set at the output", in = Dimension.TIME, zero = true) Shown<Double> delaySeconds,
                      @Field(key = "limiter", says = "most power the limiter lets through", in = Dimension.POWER) Shown<Double> limiterWatts) {

    /** The gain: target volts for a tone. */
    public record Gain(String path, At at,
                       @Field(key = "target", says = "AC volts to be set at the output", in = Dimension.VOLTAGE) Shown<Double> targetVolts,
                       @Field(key = "tone", says = "frequency of the test tone", in = Dimension.FREQUENCY) Shown<Double> toneHertz,
                       @Field(key = "level", says = "level of the test tone against full scale", in = Dimension.LEVEL, zero = true)
                       Shown<Double> level,
                       @Field(key = "measured", says = "AC volts measured at the output with the gain set", in = Dimension.VOLTAGE)
                       Shown<Double> measuredVolts) {
    }

    /** A filter. */
    public record Filter(String path, At at,
                         @Field(key = "corner", says = "corner of the filter", in = Dimension.FREQUENCY) Shown<Double> cornerHertz,
                         @Field(key = "shape", says = "family of the filter", words = {"butterworth", "linkwitz-riley"}) Shown<String> shape,
                         @Field(key = "order", says = "order of the filter, 6 dB an octave each") Shown<Integer> order) {
    }

    /** Filters before this output. */
    public record Before(String path, At at,
                         @Field(key = "high-pass", says = "high-pass filter before this output") Filter highPass,
                         @Field(key = "low-pass", says = "low-pass filter before this output") Filter lowPass) {
    }
}
