package bayproof.vocabulary;

/**
 * A vented enclosure and its port.
 *
 * @param vented         whether it is vented
 * @param tuningShare    tuning of box and port over what is wanted
 * @param clearMetres    free way from the ends of the port
 * @param diameterMetres diameter of the port
 * @param length         other lengths of the port
 */
public record PortedBox(String subject, At at, Shown<Boolean> vented, Shown<Double> tuningShare, Shown<Double> clearMetres,
        Shown<Double> diameterMetres, Knob length) implements Fact {
}
