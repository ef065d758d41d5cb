package bayproof.vocabulary;

/**
 * One channel of sound that is made of factory outputs.
 *
 * @param summed        whether it is made of several
 * @param polarity      whether those have the same polarity
 * @param delaySeconds  largest difference of their delays
 * @param covers        whether they carry the band that is made of them
 * @param carried       what they carry, for the report
 * @param flat          whether they are flat, or made flat by a processor of the job
 * @param steady        whether none limits itself, or the settings say at which volume they hold
 */
public record SoundChannel(String subject, At at, Shown<Boolean> summed, Shown<Boolean> polarity, Shown<Double> delaySeconds,
                           Shown<Boolean> covers, Shown<String> carried, Shown<Boolean> flat, Shown<Boolean> steady) implements Fact {
}
