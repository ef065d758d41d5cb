package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.util.List;

/** The signal of what stands between a source and an amplifier. */
public record LineSignal(@Field(key = "input-most", says = "greatest clean volts at a signal input", in = Dimension.VOLTAGE) Shown<Double> mostInputVolts,
                         @Field(key = "signal-volts", says = "greatest clean volts at a signal output", in = Dimension.VOLTAGE)
                         Shown<Double> outputVolts,
                         @Field(key = "signals", says = "number of its signal terminals, signal-1 onward") Shown<Integer> terminals,
                         @Field(key = "free-signals", says = "signal terminals that stay free in this job; none is []")
                         Shown<List<String>> free) {

    /** The signal of an item; null where it is of a kind that has none of its own. */
    public static LineSignal of(Item item) {
        return item instanceof Item.Interface module ? module.signal() : item instanceof Item.Processor processor ? processor.signal()
                : item instanceof Item.Accessory accessory ? accessory.signal() : null;
    }
}
