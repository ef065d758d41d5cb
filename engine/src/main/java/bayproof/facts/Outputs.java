package bayproof.facts;

import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Setting;
import bayproof.solve.sound.Levels;
import bayproof.units.Dimension;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The amplifier outputs of a job that voice coils hang on, with what is set at them. */
final class Outputs {
    /**
     * One output.
     *
     * @param wiring what hangs on it
     */
    record Output(Item.Amplifier amplifier, Plan.Wiring wiring) {
        boolean bridged() {
            return Amplifiers.isBridged(wiring);
        }

        /** The coils of its net; empty where no net is written. */
        List<String> coils() {
            return wiring.net().isGiven() ? CoilNet.parse(wiring.net().orElse("")).coils() : List.of();
        }

        /** Items whose coils hang on it, in the order written. */
        Set<String> speakers() {
            Set<String> speakers = new LinkedHashSet<>();
            coils().forEach(coil -> speakers.add(coil.substring(0, coil.indexOf('.'))));
            return speakers;
        }
    }

    private final Model model;
    private final Amplifiers amplifiers;
    private final List<Output> all = new ArrayList<>();

    Outputs(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
        for (Item.Amplifier amplifier : model.job.itemsOf(Item.Amplifier.class)) {
            amplifiers.outputsOf(amplifier).forEach(wiring -> all.add(new Output(amplifier, wiring)));
        }
    }

    List<Output> all() {
        return all;
    }

    /** Outputs on which a speaker hangs, itself or behind a complete passive network. */
    List<Output> of(Item.Speaker speaker) {
        return all.stream().filter(output -> output.speakers().stream().anyMatch(id -> id.equals(speaker.id())
                || model.job.items().get(id) instanceof Item.PassiveNetwork network && network.feeds().orElse(List.of()).contains(speaker.id()))).toList();
    }

    /** Speakers whose coils hang on an output, in the order written; what hangs behind a passive network is not among them. */
    List<Item.Speaker> speakersOf(Output output) {
        return output.speakers().stream().map(model.job.items()::get).filter(Item.Speaker.class::isInstance).map(Item.Speaker.class::cast).toList();
    }

    /** Whether a speaker's coils hang on its outputs themselves, not behind a complete passive network. */
    boolean isDirect(Item.Speaker speaker) {
        return of(speaker).stream().allMatch(output -> output.speakers().contains(speaker.id()));
    }

    /** Whether low tones destroy a speaker and nothing but its outputs keeps them from it. */
    Shown<Boolean> isSmall(Item.Speaker speaker) {
        return isDirect(speaker) ? speaker.data().plays().map(type -> model.limit("small-speakers").words().contains(type)) : Shown.of(false);
    }

    /** Power of all coils of a speaker. */
    static double wattsOf(Map<String, Double> byCoil, Item.Speaker speaker) {
        return byCoil.entrySet().stream().filter(one -> one.getKey().startsWith(speaker.id() + ".")).mapToDouble(Map.Entry::getValue).sum();
    }

    /** What is set at a terminal; null where nothing is written. */
    Setting setting(String terminal) {
        return model.job.plan().settings().get(terminal);
    }

    /** A value of a setting, missing with its own path where no setting is written. */
    <T> Shown<T> set(String terminal, Shown<T> value, String key, String ask) {
        return setting(terminal) == null ? Shown.missing(new Need("settings." + terminal + "." + key, ask, model.job.planAt())) : value;
    }

    /** Volts at full scale that the target at a terminal means: target x 10^(-level/20). */
    Shown<Double> askedVolts(String terminal) {
        Setting setting = setting(terminal);
        Shown<Double> target = set(terminal, setting == null ? null : setting.gain().targetVolts(), "gain.target", "AC volts to be set at the output");
        Shown<Double> level = set(terminal, setting == null ? null : setting.gain().level(), "gain.level", "level of the test tone against full scale");
        return target.with(level, (volts, decibels) -> Levels.voltsAt(volts, -decibels)).then(volts -> Shown.of(volts,
                () -> Model.print(target.orElse(0.0), Dimension.VOLTAGE) + " x 10^(" + -level.orElse(0.0) + "/20)"));
    }

    /** Nominal load of an output, or its least over the audible range. */
    Shown<Double> loadOhms(Output output) {
        return amplifiers.loadOhms(output.wiring());
    }

    /** Output of an amplifier into its planned loads at full sine. */
    Shown<Double> outputWatts(Item.Amplifier amplifier) {
        return amplifiers.outputWatts(amplifier);
    }

    /** The most volts that leave an output: its own at rated power, less where the gain or the limiter caps them. */
    Shown<Double> cappedVolts(Output output) {
        Shown<Double> volts = Amplifiers.fullVolts(output.amplifier(), output.bridged());
        Shown<Double> asked = askedVolts(output.wiring().id());
        if (asked.isGiven()) {
            volts = volts.with(asked, Math::min);
        }
        Setting setting = setting(output.wiring().id());
        if (setting != null && setting.limiterWatts().isGiven()) {
            volts = volts.with(setting.limiterWatts().with(loadOhms(output), Levels::targetVolts), Math::min);
        }
        return volts;
    }
}
