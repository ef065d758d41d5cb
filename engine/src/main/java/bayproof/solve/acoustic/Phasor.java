package bayproof.solve.acoustic;

/**
 * A complex amplitude or impedance at one frequency.
 *
 * @param real      real part
 * @param imaginary imaginary part
 */
public record Phasor(double real, double imaginary) {
    public static final Phasor ONE = new Phasor(1, 0);

    /** A purely imaginary one. */
    static Phasor i(double imaginary) {
        return new Phasor(0, imaginary);
    }

    /** A delay at a frequency: magnitude 1, phase -2 pi f t. */
    static Phasor delay(double hertz, double seconds) {
        double angle = -2 * Math.PI * hertz * seconds;
        return new Phasor(Math.cos(angle), Math.sin(angle));
    }

    Phasor plus(Phasor other) {
        return new Phasor(real + other.real, imaginary + other.imaginary);
    }

    Phasor times(Phasor other) {
        return new Phasor(real * other.real - imaginary * other.imaginary, real * other.imaginary + imaginary * other.real);
    }

    Phasor times(double factor) {
        return new Phasor(real * factor, imaginary * factor);
    }

    Phasor inverse() {
        double square = real * real + imaginary * imaginary;
        return new Phasor(real / square, -imaginary / square);
    }

    Phasor over(Phasor other) {
        return times(other.inverse());
    }

    public double magnitude() {
        return Math.hypot(real, imaginary);
    }

    /** 20 log10 of the magnitude. */
    public double decibels() {
        return 20 * Math.log10(magnitude());
    }
}
