package bayproof.vocabulary;

/**
 * A pass-through that planned runs go through, by its origin.
 *
 * @param drilled      whether it is drilled for the job
 * @param noSpareFactory whether no hole of the vehicle maker between the same two zones has room
 * @param spares       those holes, for the report
 * @param finish       how it is finished after drilling
 * @param origin     who made it
 * @param finished     a better finish
 */
public record HoleInUse(String subject, At at, Shown<Boolean> drilled, Shown<Boolean> noSpareFactory, Shown<String> spares,
                        Shown<String> finish, Shown<String> origin, Knob finished) implements Fact {
}
