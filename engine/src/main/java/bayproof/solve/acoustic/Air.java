package bayproof.solve.acoustic;

/**
 * The air in a box and a port.
 *
 * @param density kg/m3
 * @param speed   speed of sound, m/s
 */
public record Air(double density, double speed) {
    /** Air in a room, as lecture notes 34870 of a technical university take it. */
    public static final Air ROOM = new Air(1.2, 344);

    /** Compliance of a volume of air: V/(rho c^2), m5/N. */
    double compliance(double cubicMetres) {
        return cubicMetres / (density * speed * speed);
    }
}
