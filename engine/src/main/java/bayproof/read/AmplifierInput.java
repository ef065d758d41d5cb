package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.util.List;

/** What an amplifier takes at its signal inputs and from its supply. */
public record AmplifierInput(@Field(key = "input-least", says = "input volts that give rated output with the gain all the way up", in = Dimension.VOLTAGE)
                             Shown<Double> leastInputVolts,
                             @Field(key = "input-most", says = "greatest clean volts at a signal input, the gain all the way down", in = Dimension.VOLTAGE)
                             Shown<Double> mostInputVolts,
                             @Field(key = "regulated", says = "whether its output holds when the supply volts fall; yes where nothing is written", words = {"yes", "no"})
                             Shown<String> regulated,
                             @Field(key = "own-fuses", says = "ratings of the fuses in the amplifier itself, added up", in = Dimension.CURRENT)
                             Shown<Double> ownFuseAmperes,
                             @Field(key = "bridges", says = "pairs that its papers list as ones to bridge, such as bridged-1; none is []")
                             Shown<List<String>> bridges) {
}
