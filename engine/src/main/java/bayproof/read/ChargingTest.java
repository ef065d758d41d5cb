package bayproof.read;

import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** Volts at a battery's posts with the engine running and everything loud. */
public record ChargingTest(String path, At at,
                           @Field(key = "idle", says = "volts at its posts at hot idle, everything loud", in = Dimension.VOLTAGE) Shown<Double> idleVolts,
                           @Field(key = "idle-later", says = "volts at its posts at hot idle two minutes later", in = Dimension.VOLTAGE)
                           Shown<Double> laterVolts,
                           @Field(key = "fast", says = "volts at its posts at about 2000 revolutions a minute", in = Dimension.VOLTAGE)
                           Shown<Double> fastVolts,
                           @Inline Taking taking) {
}
