package bayproof.vocabulary;

/**
 * A channel of sound and the weights of the outputs that are summed to it.
 *
 * @param summed        whether it is made of several outputs
 * @param apartDecibels how far apart the gains lie that the outputs are summed with, dB
 */
public record SummedChannel(String subject, At at, Shown<Boolean> summed, Shown<Double> apartDecibels) implements Fact {
}
