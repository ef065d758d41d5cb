package bayproof.vocabulary;

/**
 * An amplifier output with the voice coils that hang on it.
 *
 * @param bridged     whether two channels are bridged
 * @param loadOhms    nominal load of the net
 * @param reached     whether a cable joins each speaker of the net to this output, and the output exists
 * @param minimumOhms least rated load of this output as it is used
 * @param rewire      other ways to join the same coils
 */
public record OutputLoad(String subject, At at, boolean bridged, Shown<Double> loadOhms, Shown<Boolean> reached,
                         Shown<Double> minimumOhms, Knob rewire)
        implements Fact {
}
