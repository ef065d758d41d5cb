package bayproof.refit;

import bayproof.read.AudioTable;
import bayproof.vocabulary.Shown;
import java.util.function.Function;

/** The tones that an output of a vehicle is measured with. */
public enum Tone {
    LOW(40, AudioTable.Tones::lowVolts), MID(1000, AudioTable.Tones::midVolts), HIGH(10000, AudioTable.Tones::highVolts);

    private final double hertz;
    private final Function<AudioTable.Tones, Shown<Double>> volts;

    Tone(double hertz, Function<AudioTable.Tones, Shown<Double>> volts) {
        this.hertz = hertz;
        this.volts = volts;
    }

    Shown<Double> volts(AudioTable.Tones table) {
        return volts.apply(table);
    }

    /** The one that is fewest octaves away from a frequency, the lower of two. */
    static Tone nearest(double frequencyHertz) {
        Tone nearest = LOW;
        for (Tone tone : values()) {
            nearest = Math.abs(Math.log(frequencyHertz / tone.hertz)) < Math.abs(Math.log(frequencyHertz / nearest.hertz)) ? tone : nearest;
        }
        return nearest;
    }
}
