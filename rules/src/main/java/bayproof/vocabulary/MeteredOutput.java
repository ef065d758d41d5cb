package bayproof.vocabulary;

/**
 * A speaker load as an ohmmeter sees it from the amplifier's plug.
 *
 * @param readOhms the reading
 * @param lowOhms least reading of the net as planned
 * @param highOhms greatest reading of the net as planned
 * @param expectedOhms the same as what it rests on
 * @param decided whether no fault would read the same
 * @param doubtful those faults
 * @param alike faults that could read like the net as planned, whatever is read
 */
public record MeteredOutput(String subject, At at, Shown<Double> readOhms, Shown<Double> lowOhms, Shown<Double> highOhms,
        Shown<Double> expectedOhms, Shown<Boolean> decided, Shown<String> doubtful, Shown<String> alike) implements Fact {
}
