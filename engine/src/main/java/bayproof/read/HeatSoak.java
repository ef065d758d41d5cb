package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** Loud play until everything is as warm as it gets. */
public record HeatSoak(String path, At at,
                       @Field(key = "play", says = "time of loud play before the temperatures were taken", in = Dimension.TIME) Shown<Double> playSeconds,
                       @Field(key = "air", says = "temperature of the air meanwhile", in = Dimension.TEMPERATURE) Shown<Double> airCelsius,
                       @Field(key = "joint", says = "temperature of the hottest fuse or terminal", in = Dimension.TEMPERATURE) Shown<Double> jointCelsius,
                       @Inline Taking taking) {
}
