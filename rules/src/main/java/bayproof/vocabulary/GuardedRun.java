package bayproof.vocabulary;

/**
 * A feed conductor with the fuse that guards it.
 *
 * @param guarded     whether a fuse guards it at all; where none does, the length rules judge it
 * @param fuse        id of that fuse, for the report
 * @param loadShare   rating of the fuse as a share of the conductor's ampacity where it runs
 * @param smallerFuse ratings below the planned one
 * @param largerSize  sizes above the planned one
 */
public record GuardedRun(String subject, At at, Shown<Boolean> guarded, String fuse, Shown<Double> loadShare,
                         Knob smallerFuse, Knob largerSize) implements Fact {
}
