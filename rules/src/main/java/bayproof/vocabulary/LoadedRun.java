package bayproof.vocabulary;

/**
 * A conductor of the job in the supply or the return, with the current it carries.
 *
 * @param sineShare  current at full sine as a share of the ampacity where it runs, in the worse of the states charging
 *                   full and on battery
 * @param largerSize sizes above the planned one
 */
public record LoadedRun(String subject, At at, Shown<Double> sineShare, Knob largerSize) implements Fact {
}
