package bayproof.vocabulary;

/**
 * What a mount must hold in a crash.
 *
 * @param inside         whether the item is where it can reach the people inside
 * @param counts         whether its mass is large enough to be looked at
 * @param mayKill        whether it is heavy enough for a stop, or nobody knows its mass
 * @param forceNewtons   force along the vehicle
 * @param holdsNewtons   what all its fasteners together are taken to hold
 * @param moreFasteners  larger numbers of fasteners
 */
public record CrashLoad(String subject, At at, Shown<Boolean> inside, Shown<Boolean> counts, boolean mayKill,
                        Shown<Double> forceNewtons, Shown<Double> holdsNewtons, Knob moreFasteners) implements Fact {
}
