package bayproof.solve;

/**
 * The part of its characteristic a source works on. Each source is in exactly one condition; on the border between two
 * of them the solver names the one with the higher voltage.
 */
public enum Condition {
    /** Battery above its rest volts: it takes exactly its acceptance current. */
    TAKING_ACCEPTANCE,
    /** Battery at its rest volts: it takes between nothing and its acceptance current. */
    AT_REST_VOLTS,
    /** Battery below its rest volts: it gives (rest volts - volts) / internal ohms. */
    GIVING,
    /** Regulated source above its set point: it gives nothing. */
    STANDING_BY,
    /** Regulated source at its set point: it gives between nothing and its limit. */
    HOLDING_SET_POINT,
    /** Regulated source below its set point: it gives exactly its limit. */
    AT_LIMIT
}
