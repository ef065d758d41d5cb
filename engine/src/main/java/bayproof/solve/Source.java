package bayproof.solve;

import java.util.List;

/** What gives current between two nodes. */
public sealed interface Source {
    /** Its name among the sources. */
    String id();

    /** The node of the positive terminal. */
    String positive();

    /** The node of the negative terminal. */
    String negative();

    /** The conditions it can be in, the one with the highest volts first. */
    List<Condition> conditions();

    /**
     * A battery: below its rest volts it gives (rest volts - volts) / internal ohms; at its rest volts it takes between
     * 0 and its acceptance current; above, it takes exactly its acceptance current.
     *
     * @param restVolts         its volts when it neither gives nor takes, V, above 0
     * @param internalOhms      its internal resistance, ohm, above 0
     * @param acceptanceAmperes the current it takes while it is charged, A, at least 0
     */
    record Battery(String id, String positive, String negative, double restVolts, double internalOhms,
            double acceptanceAmperes) implements Source {
        private static final List<Condition> CONDITIONS =
                List.of(Condition.TAKING_ACCEPTANCE, Condition.AT_REST_VOLTS, Condition.GIVING);

        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if one is out of range
         */
        public Battery {
            Checks.ends("battery", id, positive, negative);
            Checks.above0("battery", id, "rest volts", restVolts);
            Checks.above0("battery", id, "internal ohms", internalOhms);
            Checks.atLeast0("battery", id, "acceptance amperes", acceptanceAmperes);
        }

        @Override
        public List<Condition> conditions() {
            return CONDITIONS;
        }
    }

    /**
     * An alternator, or the output of a converter: it holds its set point while it gives between 0 and its limit; it
     * gives exactly its limit below the set point and nothing above it.
     *
     * @param setVolts     its set point, V, above 0
     * @param limitAmperes the most it gives, A, above 0; infinite if it has no limit
     */
    record Regulated(String id, String positive, String negative, double setVolts, double limitAmperes)
            implements Source {
        private static final List<Condition> LIMITED =
                List.of(Condition.STANDING_BY, Condition.HOLDING_SET_POINT, Condition.AT_LIMIT);
        private static final List<Condition> UNLIMITED =
                List.of(Condition.STANDING_BY, Condition.HOLDING_SET_POINT);

        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if one is out of range
         */
        public Regulated {
            Checks.ends("regulated source", id, positive, negative);
            Checks.above0("regulated source", id, "set volts", setVolts);
            if (!(limitAmperes > 0)) {
                throw new IllegalArgumentException(
                        "regulated source " + id + ": limit amperes must be above 0, not " + limitAmperes);
            }
        }

        @Override
        public List<Condition> conditions() {
            return Double.isInfinite(limitAmperes) ? UNLIMITED : LIMITED;
        }
    }
}
