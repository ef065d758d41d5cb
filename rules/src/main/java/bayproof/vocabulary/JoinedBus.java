package bayproof.vocabulary;

/**
 * A data bus that the job joins.
 *
 * @param by         item that joins it
 * @param kind       kind of the bus
 * @param carries    what the bus is for
 * @param fast       whether it is a high-speed pair
 * @param stubMetres length of the stub
 * @param ohms       resistance across the pair with the supply off
 * @param shorter    the stub to shorten
 */
public record JoinedBus(String subject, At at, Shown<String> by, Shown<String> kind, Shown<String> carries, Shown<Boolean> fast, Shown<Double> stubMetres,
                        Shown<Double> ohms, Knob shorter) implements Fact {
}
