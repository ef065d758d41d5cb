package bayproof.vocabulary;

/**
 * The coil of a relay.
 *
 * @param fromBattery whether a source feeds it, and not an output of a device or a wire of the factory
 * @param ownFuse     whether the fuse before it feeds nothing but coils
 * @param fuseAmperes rating of the fuse before it, several added up
 * @param damped      whether a diode or resistor takes up its spike
 */
public record RelayCoil(String subject, At at, Shown<Boolean> fromBattery, Shown<Boolean> ownFuse, Shown<Double> fuseAmperes, Shown<Boolean> damped)
        implements Fact {
}
