package bayproof.solve.sound;

/**
 * A complex impedance at one frequency.
 *
 * @param ohms     resistance
 * @param reactive reactance, ohm; below zero for a capacitor
 */
record Impedance(double ohms, double reactive) {
    double magnitude() {
        return Math.hypot(ohms, reactive);
    }

    Impedance plus(Impedance other) {
        return new Impedance(ohms + other.ohms, reactive + other.reactive);
    }

    Impedance inverse() {
        double square = ohms * ohms + reactive * reactive;
        return new Impedance(ohms / square, -reactive / square);
    }
}
