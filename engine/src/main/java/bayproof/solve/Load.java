package bayproof.solve;

/** What an item draws between two nodes. A cut-off of 0 V means that it has none. */
public sealed interface Load {
    /** Its name among the loads. */
    String id();

    /** The node of the positive terminal. */
    String positive();

    /** The node of the negative terminal. */
    String negative();

    /** The volts below which the item stops working, V, at least 0. It is reported, never switched off. */
    double cutOffVolts();

    /**
     * An item that holds its power by drawing more current the lower its volts are, such as an amplifier with a
     * switching supply.
     *
     * @param watts the power it draws, W, at least 0
     */
    record ConstantPower(String id, String positive, String negative, double watts, double cutOffVolts)
            implements Load {
        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if one is out of range
         */
        public ConstantPower {
            Checks.ends("load", id, positive, negative);
            Checks.atLeast0("load", id, "watts", watts);
            Checks.atLeast0("load", id, "cut-off volts", cutOffVolts);
        }
    }

    /**
     * An item whose current does not depend on its volts.
     *
     * @param amperes the current it draws, A, at least 0
     */
    record ConstantCurrent(String id, String positive, String negative, double amperes, double cutOffVolts)
            implements Load {
        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if one is out of range
         */
        public ConstantCurrent {
            Checks.ends("load", id, positive, negative);
            Checks.atLeast0("load", id, "amperes", amperes);
            Checks.atLeast0("load", id, "cut-off volts", cutOffVolts);
        }
    }

    /**
     * An item that behaves as a resistor, such as a lamp or a heater.
     *
     * @param ohms its resistance, ohm, above 0
     */
    record Resistive(String id, String positive, String negative, double ohms, double cutOffVolts) implements Load {
        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException if one is out of range
         */
        public Resistive {
            Checks.ends("load", id, positive, negative);
            Checks.above0("load", id, "ohms", ohms);
            Checks.atLeast0("load", id, "cut-off volts", cutOffVolts);
        }
    }
}
