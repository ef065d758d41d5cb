package bayproof.vocabulary;

/**
 * The heat soak of the finished job.
 *
 * @param playSeconds time of loud play
 * @param jointKelvin rise of the hottest fuse or terminal over the air
 */
public record SoakedJob(String subject, At at, Shown<Double> playSeconds, Shown<Double> jointKelvin) implements Fact {
}
