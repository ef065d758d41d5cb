package bayproof.solve;

/** The short sums on supply and mounting that facts about a job and a figure asked by hand have in common. */
public final class Sums {
    /** Standard gravity, m/s2 (NIST SP 811 appendix B). */
    public static final double GRAVITY = 9.80665;
    /** Far below what a tape shows; a difference of two lengths is cut off here so that 17 mm - 12 mm is 5 mm. */
    private static final double FINEST = 1e9;

    private Sums() {
    }

    /** One value as a share of another one of its kind. */
    public static double share(double part, double whole) {
        return part / whole;
    }

    /** What is left of a source once everything that is drawn is taken off, A; below 0 where more is drawn. */
    public static double leftAmperes(double outputAmperes, double drawnAmperes) {
        return outputAmperes - drawnAmperes;
    }

    /**
     * Time until a share of a battery's capacity is gone.
     *
     * @param share    share that may be gone, 0 to 1
     * @param coulombs capacity
     * @param amperes  standby current, above 0
     */
    public static double lastsSeconds(double share, double coulombs, double amperes) {
        return share * coulombs / amperes;
    }

    /** Force that a number of fasteners hold, as a share of the weight of what they hold: F n/(m g). */
    public static double heldShare(double newtons, double kilograms) {
        return newtons / (kilograms * GRAVITY);
    }

    /** Difference of two lengths without the rounding of binary fractions. */
    public static double lengthLeft(double metres, double takenMetres) {
        return Math.round((metres - takenMetres) * FINEST) / FINEST;
    }

    /**
     * Force that the hold-down of a battery has to stand, N: a named one, or a number of times its weight where that is less.
     *
     * @param newtons force that is always enough
     * @param weights number of times its weight
     */
    public static double holdDownNewtons(double kilograms, double newtons, double weights) {
        return Math.min(newtons, weights * kilograms * GRAVITY);
    }

    /**
     * Current that a dead short draws from a battery.
     *
     * @param volts volts at rest
     * @param ohms  inner resistance and conductors together
     */
    public static double shortAmperes(double volts, double ohms) {
        return volts / ohms;
    }

    /** Room on each side of a box in the middle of a clear space. */
    public static double roomEachSide(double clearMetres, double outerMetres) {
        return lengthLeft(clearMetres, outerMetres) / 2;
    }

    /** How far two values lie apart, as a share of the larger of the two; 0 where both are 0. */
    public static double apartShare(double one, double other) {
        double larger = Math.max(Math.abs(one), Math.abs(other));
        return larger == 0 ? 0 : Math.abs(one - other) / larger;
    }
}
