package bayproof.vocabulary;

/**
 * A conductor of the job that leaves the output of an alternator or a converter.
 *
 * @param source             id of the source
 * @param wantsFuse          false where the data sheet says that the output limits itself
 * @param fused              false when a complete path reaches a load or another source without a fuse
 * @param lengthToFuseMetres conductor length from the output to the first fuse, all runs in series added, the longest branch
 * @param shorten            the length to shorten
 */
public record ChargingRun(String subject, At at, String source, Shown<Boolean> wantsFuse, Shown<Boolean> fused,
                          Shown<Double> lengthToFuseMetres, Knob shorten) implements Fact {
}
