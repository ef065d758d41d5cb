package bayproof.solve.sound;

import java.util.List;

/**
 * A factory output as it was measured: clean volts at one volume step for several tones. Figures hold at that volume step and
 * nowhere else.
 *
 * @param carries  the band it carries, in the words of the vehicle sheet
 * @param inverted whether its polarity is inverted
 * @param delaySeconds how late it is against the earliest output
 * @param step     the volume step
 * @param tones    clean volts at each tone
 */
public record FactoryOutput(String carries, boolean inverted, double delaySeconds, String step, List<Tone> tones) {
    /** Clean volts at one tone. */
    public record Tone(double hertz, double volts) {
    }

    public FactoryOutput {
        tones = List.copyOf(tones);
    }

    /** Volts at a tone; not a number where it was not measured. */
    public double volts(double hertz) {
        return tones.stream().filter(tone -> tone.hertz() == hertz).mapToDouble(Tone::volts).findFirst().orElse(Double.NaN);
    }

    /** How far the volts of the tones lie apart, in decibels: a shaped output differs, and so does one that limits itself. */
    public double spreadDecibels() {
        double most = tones.stream().mapToDouble(Tone::volts).max().orElse(Double.NaN);
        double least = tones.stream().mapToDouble(Tone::volts).min().orElse(Double.NaN);
        return Levels.decibels(most, least);
    }

    /**
     * How much less a louder step gives than the volume knob promises: the rise at one tone less the rise at another, in decibels. An
     * output that limits or shapes itself with volume gives more than 0.
     */
    public double heldBackDecibels(FactoryOutput louder, double hertz, double referenceHertz) {
        return Levels.decibels(louder.volts(referenceHertz), volts(referenceHertz)) - Levels.decibels(louder.volts(hertz), volts(hertz));
    }

    /**
     * Whether two outputs may be summed: same polarity and the same delay. Sums whose parts differ are wrong.
     *
     * @param sameDelaySeconds difference of delay up to which two count as the same
     */
    public boolean sumsWith(FactoryOutput other, double sameDelaySeconds) {
        return inverted == other.inverted && Math.abs(delaySeconds - other.delaySeconds) <= sameDelaySeconds;
    }
}
