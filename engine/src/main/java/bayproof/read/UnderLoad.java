package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** What was measured at an amplifier while it drew a stated current. */
public record UnderLoad(String path, At at,
                        @Field(key = "current", says = "current it drew while the drop was measured", in = Dimension.CURRENT) Shown<Double> amperes,
                        @Field(key = "feed-drop", says = "volts lost from the battery post to its supply terminal", in = Dimension.VOLTAGE, zero = true)
                        Shown<Double> feedVolts,
                        @Field(key = "ground-drop", says = "volts lost from its ground terminal to the negative post", in = Dimension.VOLTAGE, zero = true)
                        Shown<Double> groundVolts,
                        @Field(key = "joint-drop", says = "most volts lost at one joint or fuse on its way", in = Dimension.VOLTAGE, zero = true)
                        Shown<Double> jointVolts,
                        @Field(key = "case", says = "temperature of its case at the end of the heat soak", in = Dimension.TEMPERATURE)
                        Shown<Double> caseCelsius,
                        @Inline Taking taking) {
}
