package bayproof.vocabulary;

/**
 * A run as it lies in the vehicle.
 *
 * @param planned       whether this job lays it; otherwise the vehicle maker did
 * @param tiedTo        what it is tied to besides the body
 * @param supportMetres largest distance between supports
 * @param bendShare     inner radius of its tightest bend, in outer diameters
 * @param label         where it carries its id
 * @param closer        supports closer together
 * @param wider         a wider bend
 */
public record LaidRun(String subject, At at, Shown<Boolean> planned, Shown<String> tiedTo, Shown<Double> supportMetres,
                      Shown<Double> bendShare, Shown<String> label, Knob closer, Knob wider) implements Fact {
}
