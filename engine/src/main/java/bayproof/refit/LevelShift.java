package bayproof.refit;

import bayproof.read.AudioInput;
import bayproof.read.AudioTable;
import bayproof.read.Job;
import bayproof.read.Setting;
import bayproof.read.Vehicle;
import bayproof.solve.sound.Levels;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.worksheet.SourceLevel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sound that the new vehicle gives against the old one, channel by channel, both at the high volume step; and what it makes of each
 * output's gain.
 *
 * @param channels one for each audio input of the old plan
 * @param outputs  one for each setting of the old plan with a gain target, where the plan takes any sound from the vehicle
 */
public record LevelShift(List<Channel> channels, List<Output> outputs) {

    /**
     * One channel.
     *
     * @param input    name of the audio input
     * @param before   outputs of the old vehicle it is made of
     * @param after    outputs of the new vehicle that stand for them; empty where one has no counterpart
     * @param decibels level of the new source against the old at each tone it is measured with
     * @param breaks   why no setting of the channel holds any more; null where none breaks
     */
    public record Channel(String input, List<String> before, List<String> after, Map<Tone, Shown<Double>> decibels, String breaks) {
        public Channel {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        public Shown<Double> decibels(Tone tone) {
            return decibels.get(tone);
        }
    }

    /**
     * One output of an amplifier or processor.
     *
     * @param setting     name of its setting
     * @param inputs      channels that it plays; missing where the plan does not say and they do not all move alike
     * @param target      AC volts it is set to while the source stands at its high step
     * @param decibels    what the new source gives against the old one at the tone of the setting
     * @param lowStepVolts the same target read while the new source stands at its low step; missing where the steps of its channels differ
     * @param breaks      why the setting does not hold any more; null where it does
     */
    public record Output(String setting, Shown<List<String>> inputs, Shown<Double> target, Shown<Double> decibels, Shown<Double> lowStepVolts, String breaks) {

        /** Volts that the output would give with its gain left as it is. */
        public Shown<Double> untouchedVolts() {
            return target.with(decibels, Levels::voltsAt);
        }
    }

    public LevelShift {
        channels = List.copyOf(channels);
        outputs = List.copyOf(outputs);
    }

    /** What is set at an output; null where it takes no gain, or the plan no sound from the vehicle. */
    public Output output(String setting) {
        return outputs.stream().filter(one -> one.setting().equals(setting)).findFirst().orElse(null);
    }

    static LevelShift of(Job old, Job into, Counterparts counterparts) {
        Builder builder = new Builder(old, into);
        List<Channel> channels = old.plan().audioInputs().values().stream().map(input -> builder.channel(input, counterparts)).toList();
        List<Output> outputs = channels.isEmpty() ? List.of() : old.plan().settings().values().stream().filter(setting -> setting.gain().targetVolts().isGiven())
                .map(setting -> builder.output(setting, channels)).toList();
        return new LevelShift(channels, outputs);
    }

    /** Puts the two vehicles side by side. */
    private static final class Builder {
        private final Job old;
        private final Job into;
        private final Map<String, SourceLevel> steps = new LinkedHashMap<>();

        Builder(Job old, Job into) {
            this.old = old;
            this.into = into;
            SourceLevel.of(into).forEach(level -> steps.put(level.channel(), level));
        }

        Channel channel(AudioInput input, Counterparts counterparts) {
            List<String> before = input.of().orElse(List.of()).stream().filter(old.vehicle().outputs()::containsKey).toList();
            boolean all = before.stream().allMatch(id -> counterparts.output(id).isFound());
            List<String> after = all ? before.stream().map(id -> counterparts.output(id).found()).toList() : List.of();
            Map<Tone, Shown<Double>> decibels = new LinkedHashMap<>();
            for (Tone tone : Tone.values()) {
                decibels.put(tone, before.isEmpty() || after.isEmpty()
                        ? Shown.missing(new Need("audio-inputs." + input.id() + ".of", "which outputs of the new vehicle feed " + input.id(), input.at()))
                        : volts(into, after, tone).with(volts(old, before, tone), Levels::decibels));
            }
            return new Channel(input.id(), before, after, decibels, breaks(before, after));
        }

        /** Volts of the outputs together: parts of one channel are summed. */
        private static Shown<Double> volts(Job job, List<String> outputs, Tone tone) {
            Shown<Double> sum = Shown.of(0.0);
            for (String id : outputs) {
                AudioTable table = job.vehicle().outputs().get(id).audio();
                sum = sum.with(tone.volts(table.loud()), Double::sum);
            }
            return sum;
        }

        private String breaks(List<String> before, List<String> after) {
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

        Output output(Setting setting, List<Channel> channels) {
            Tone tone = setting.gain().toneHertz().map(Tone::nearest).orElse(Tone.MID);
            Shown<List<String>> inputs = setting.inputs().isGiven() || !alike(channels, tone) ? setting.inputs()
                    : Shown.of(channels.stream().map(Channel::input).toList());
            List<Channel> played = channels.stream().filter(channel -> inputs.orElse(List.of()).contains(channel.input())).toList();
            String breaks = played.stream().map(Channel::breaks).filter(why -> why != null).findFirst().orElse(null);
            Shown<Double> decibels = inputs.then(names -> played.isEmpty() ? Shown.of(0.0) : together(played, tone));
            return new Output(setting.id(), inputs, setting.gain().targetVolts(), decibels, lowStep(setting, inputs), breaks);
        }

        /** Whether it makes no difference which of the channels an output plays. */
        private boolean alike(List<Channel> channels, Tone tone) {
            double same = old.limits().named("refit-level-same").value();
            boolean known = channels.stream().allMatch(channel -> channel.decibels(tone).isGiven());
            double least = channels.stream().mapToDouble(channel -> channel.decibels(tone).orElse(0.0)).min().orElse(0);
            double most = channels.stream().mapToDouble(channel -> channel.decibels(tone).orElse(0.0)).max().orElse(0);
            long broken = channels.stream().filter(channel -> channel.breaks() != null).count();
            return known && most - least <= same && (broken == 0 || broken == channels.size());
        }

        /** What several channels played by one output give together. */
        private Shown<Double> together(List<Channel> played, Tone tone) {
            Shown<Double> was = Shown.of(0.0);
            Shown<Double> is = Shown.of(0.0);
            for (Channel channel : played) {
                if (!channel.decibels(tone).isGiven()) {
                    return channel.decibels(tone);
                }
                was = was.with(volts(old, channel.before(), tone), Double::sum);
                is = is.with(volts(into, channel.after(), tone), Double::sum);
            }
            return is.with(was, Levels::decibels);
        }

        private Shown<Double> lowStep(Setting setting, Shown<List<String>> inputs) {
            Shown<Double> least = Shown.of(Double.POSITIVE_INFINITY);
            Shown<Double> most = Shown.of(Double.NEGATIVE_INFINITY);
            for (String input : inputs.orElse(List.of())) {
                if (steps.containsKey(input)) {
                    least = least.with(steps.get(input).offset(), Math::min);
                    most = most.with(steps.get(input).offset(), Math::max);
                }
            }
            double alike = into.limits().named("source-offsets-alike").value();
            Need need = new Need(setting.path() + ".gain", "set it at the step that is meant: the steps of its channels differ", setting.at());
            return setting.gain().targetVolts().with(least.with(most, (low, high) -> Double.isInfinite(low) || Double.isInfinite(high) || high - low > alike ? Double.NaN : (low + high) / 2),
                    SourceLevel::moved).then(volts -> Double.isNaN(volts) ? Shown.missing(need) : Shown.of(volts));
        }
    }
}
