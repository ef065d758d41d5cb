package bayproof.vocabulary;

/**
 * What a mount must hold in a crash.
 *
 * @param inside         whether the item is where it can reach the people inside
 * @param counts         whether its mass is large enough to be looked at
 * @param mayKill        whether it is heavy enough for a stop, or nobody knows its mass
 * @param heldShare      force along the vehicle that its fasteners together are taken to hold, as a share of its weight
 * @param moreFasteners  larger numbers of fasteners
 */
public record CrashLoad(String subject, At at, Shown<Boolean> inside, Shown<Boolean> counts, boolean mayKill, Shown<Double> heldShare,
                        Knob moreFasteners) implements Fact {
}
