package bayproof.vocabulary;

/**
 * An amplifier output with the voice coils that hang on it.
 *
 * @param bridged     whether two channels are bridged
 * @param loadOhms    nominal load of the net
 * @param minimumOhms least rated load of this output as it is used
 * @param rewire      other ways to join the same coils
 */
public record OutputLoad(String subject, At at, boolean bridged, Shown<Double> loadOhms, Shown<Double> minimumOhms, Knob rewire)
        implements Fact {
}
