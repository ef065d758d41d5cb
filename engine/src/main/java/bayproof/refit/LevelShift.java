package bayproof.refit;

import bayproof.read.AudioInput;
import bayproof.read.AudioTable;
import bayproof.read.Job;
import bayproof.read.Vehicle;
import bayproof.solve.sound.Levels;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The sound that the new vehicle gives against the old one, channel by channel, both at the high volume step.
 *
 * @param channels one for each audio input of the old plan
 */
public record LevelShift(List<Channel> channels) {

    /**
     * One channel.
     *
     * @param input        name of the audio input
     * @param before       outputs of the old vehicle it is made of
     * @param after        outputs of the new vehicle that stand for them; empty where one has no counterpart
     * @param lowDecibels  level of the new source against the old at 40 Hz
     * @param midDecibels  the same at 1 kHz
     * @param highDecibels the same at 10 kHz
     * @param breaks       why no setting of the channel holds any more; null where none breaks
     */
    public record Channel(String input, List<String> before, List<String> after, Shown<Double> lowDecibels, Shown<Double> midDecibels,
                          Shown<Double> highDecibels, String breaks) {
        public Channel {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }
    }

    public LevelShift {
        channels = List.copyOf(channels);
    }

    static LevelShift of(Job old, Job into, Counterparts counterparts) {
        List<Channel> channels = new ArrayList<>();
        for (AudioInput input : old.plan().audioInputs().values()) {
            List<String> before = input.of().orElse(List.of()).stream().filter(old.vehicle().outputs()::containsKey).toList();
            boolean all = before.stream().allMatch(id -> counterparts.output(id).isFound());
            List<String> after = all ? before.stream().map(id -> counterparts.output(id).found()).toList() : List.of();
            channels.add(new Channel(input.id(), before, after, shift(input, old, before, into, after, tones -> tones.lowVolts()),
                    shift(input, old, before, into, after, tones -> tones.midVolts()), shift(input, old, before, into, after, tones -> tones.highVolts()),
                    breaks(old, before, into, after)));
        }
        return new LevelShift(channels);
    }

    private static Shown<Double> shift(AudioInput input, Job old, List<String> before, Job into, List<String> after, Function<AudioTable.Tones, Shown<Double>> tone) {
        if (before.isEmpty() || after.isEmpty()) {
            return Shown.missing(new Need("audio-inputs." + input.id() + ".of", "which outputs of the new vehicle feed " + input.id(), input.at()));
        }
        return volts(into, after, tone).with(volts(old, before, tone), Levels::decibels);
    }

    /** Volts of the outputs together: parts of one channel are summed. */
    private static Shown<Double> volts(Job job, List<String> outputs, Function<AudioTable.Tones, Shown<Double>> tone) {
        Shown<Double> sum = Shown.of(0.0);
        for (String id : outputs) {
            sum = sum.with(tone.apply(job.vehicle().outputs().get(id).audio().loud()), Double::sum);
        }
        return sum;
    }

    private static String breaks(Job old, List<String> before, Job into, List<String> after) {
        for (int i = 0; i < after.size(); i++) {
            Vehicle.Output was = old.vehicle().outputs().get(before.get(i));
            Vehicle.Output is = into.vehicle().outputs().get(after.get(i));
            if (is.audio().shaped().orElse(false) && !was.audio().shaped().orElse(true)) {
                return is.id() + " is shaped, " + was.id() + " was flat";
            }
            if (is.audio().limitsItself().orElse(false) && !was.audio().limitsItself().orElse(true)) {
                return is.id() + " holds its bass back as the volume rises, " + was.id() + " did not";
            }
        }
        return null;
    }

    /** The largest rise or fall over all channels at 1 kHz; missing while one is. */
    public Shown<Double> largestDecibels() {
        Shown<Double> largest = Shown.of(0.0);
        for (Channel channel : channels) {
            largest = largest.with(channel.midDecibels(), (most, one) -> Math.abs(one) > Math.abs(most) ? one : most);
        }
        return largest;
    }

    /** Volts that an output would give with its gain left as it is, where it was set to {@code target}. */
    public Shown<Double> untouchedVolts(Shown<Double> target) {
        return target.with(largestDecibels(), Levels::voltsAt);
    }

    /** Why no setting holds any more; null where none breaks. */
    public String breaks() {
        return channels.stream().map(Channel::breaks).filter(why -> why != null).findFirst().orElse(null);
    }
}
