package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Setting;
import bayproof.solve.sound.Draw;
import bayproof.solve.sound.Levels;
import bayproof.solve.sound.SpeakerLoads;
import bayproof.solve.sound.SpeakerNet;
import bayproof.units.Dimension;
import bayproof.vocabulary.AmplifierChannel;
import bayproof.vocabulary.CoilPlace;
import bayproof.vocabulary.DrivenSpeaker;
import bayproof.vocabulary.DrivingAmplifier;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.GuardedSpeaker;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.RatedAmplifier;
import bayproof.vocabulary.ResonantSpeaker;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

/** Facts about each speaker and what drives it, and about each amplifier's channels and rating. */
final class DriverFacts {
    private final Model model;
    private final SpeakerNets nets;
    private final Outputs outputs;

    DriverFacts(Model model, Amplifiers amplifiers, Outputs outputs) {
        this.model = model;
        this.nets = amplifiers.nets();
        this.outputs = outputs;
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Speaker speaker : model.job.itemsOf(Item.Speaker.class)) {
            speaker.coils().keySet().stream().map(coil -> place(speaker, coil)).filter(Objects::nonNull).forEach(facts);
            // That a speaker hangs on nothing is said once, where loads are.
            if (!outputs.of(speaker).isEmpty()) {
                facts.accept(driven(speaker));
                GuardedSpeaker guarded = guarded(speaker);
                facts.accept(guarded);
                facts.accept(resonant(speaker, guarded));
            }
        }
        for (Item.Amplifier amplifier : model.job.itemsOf(Item.Amplifier.class)) {
            facts.accept(rated(amplifier));
            if (outputs.all().stream().anyMatch(output -> output.amplifier() == amplifier)) {
                facts.accept(new DrivingAmplifier(amplifier.path(), amplifier.at(), amplifier.directShutDown().map("yes"::equals)));
            }
            channels(amplifier, facts);
        }
    }

    // speakers

    /** Where a coil hangs; null where it hangs on nothing. */
    private CoilPlace place(Item.Speaker speaker, String coil) {
        String name = speaker.id() + "." + coil;
        List<String> on = new ArrayList<>();
        outputs.all().stream().filter(output -> output.coils().contains(name)).forEach(output -> on.add(output.wiring().id()));
        model.job.itemsOf(Item.PassiveNetwork.class).stream().filter(network -> network.feeds().orElse(List.of()).contains(speaker.id()))
                .forEach(network -> on.add(network.id()));
        List<Need> unknown = outputs.all().stream().flatMap(output -> output.wiring().net().needs().stream()).toList();
        if (on.isEmpty()) {
            return null;
        }
        Shown<Boolean> one = on.size() == 1 && !unknown.isEmpty() ? Shown.missing(unknown) : Shown.of(on.size() == 1);
        return new CoilPlace(speaker.path() + ".coils." + coil, speaker.at(), one, Shown.of(String.join(", ", on)));
    }

    private DrivenSpeaker driven(Item.Speaker speaker) {
        List<Output> on = outputs.of(speaker);
        Shown<Double> watts = Shown.of(0.0);
        for (Output output : on) {
            watts = watts.with(watts(speaker, output), Double::sum);
        }
        Shown<Double> reached = watts;
        Shown<Double> share = watts.with(speaker.data().ratedWatts(), Levels::powerShare).then(part -> Shown.of(part,
                () -> Model.print(reached.orElse(0.0), Dimension.POWER) + " of " + Model.print(speaker.data().ratedWatts().orElse(0.0), Dimension.POWER)));
        boolean direct = outputs.isDirect(speaker);
        Knob limiter = on.size() == 1 && direct && outputs.setting(on.get(0).wiring().id()) != null
                ? Ladders.knob(() -> wattsBelow(reached.orElse(0.0)), "settings", on.get(0).wiring().id(), "limiter") : null;
        return new DrivenSpeaker(speaker.path(), speaker.at(), Shown.of(direct), share, limiter);
    }

    /** The most power that reaches a speaker from an output, at the bottom of the audible range or at its top. */
    private Shown<Double> watts(Item.Speaker speaker, Output output) {
        if (!output.wiring().net().isGiven() || !output.speakers().contains(speaker.id())) {
            return output.wiring().net().map(text -> 0.0);
        }
        return nets.nominal(CoilNet.parse(output.wiring().net().orElse(""))).with(outputs.cappedVolts(output), (net, volts) -> Math.max(
                Outputs.wattsOf(net.wattsAt(SpeakerLoads.LOWEST_HERTZ, volts), speaker), Outputs.wattsOf(net.wattsAt(SpeakerLoads.HIGHEST_HERTZ, volts), speaker)));
    }

    static List<String> wattsBelow(double watts) {
        List<String> ladder = new ArrayList<>();
        for (int step = (int) Math.ceil(watts) - 1; step >= 1 && ladder.size() < 3000; step--) {
            ladder.add(step + " W");
        }
        return ladder;
    }

    private GuardedSpeaker guarded(Item.Speaker speaker) {
        List<Output> on = outputs.of(speaker);
        Shown<Double> corner = Shown.of(Double.POSITIVE_INFINITY);
        for (Output output : on) {
            corner = corner.with(corner(speaker, output), Math::min);
        }
        Setting setting = on.size() == 1 ? outputs.setting(on.get(0).wiring().id()) : null;
        Knob knob = setting != null && setting.highPass().cornerHertz().isGiven()
                ? Ladders.knob(() -> hertzAbove(setting.highPass().cornerHertz().orElse(0.0)), "settings", setting.id(), "high-pass", "corner") : null;
        return new GuardedSpeaker(speaker.path(), speaker.at(), outputs.isSmall(speaker), corner, speaker.data().lowestCrossoverHertz(), knob);
    }

    private static ResonantSpeaker resonant(Item.Speaker speaker, GuardedSpeaker guarded) {
        Shown<Double> resonance = speaker.driver().resonanceHertz();
        return new ResonantSpeaker(speaker.path(), speaker.at(), guarded.small(), guarded.cornerHertz().with(resonance, (corner, own) -> corner / own).then(share ->
                Shown.of(share, () -> Model.print(guarded.cornerHertz().orElse(0.0), Dimension.FREQUENCY) + " / " + Model.print(resonance.orElse(0.0), Dimension.FREQUENCY))),
                guarded.corner());
    }

    /** The higher of the filter's corner and the capacitor's. */
    private Shown<Double> corner(Item.Speaker speaker, Output output) {
        String terminal = output.wiring().id();
        Setting setting = outputs.setting(terminal);
        Shown<Double> filter = outputs.set(terminal, setting == null ? null : setting.highPass().cornerHertz(), "high-pass.corner", "corner of the filter");
        if (!speaker.data().capacitorFarads().isGiven() || speaker.coils().isEmpty()) {
            return filter;
        }
        Shown<Double> capacitor = nets.nominalOhms(speaker.id() + "." + speaker.coils().keySet().iterator().next())
                .with(speaker.data().capacitorFarads(), SpeakerLoads::cornerHertz);
        return filter.isGiven() ? filter.with(capacitor, Math::max) : capacitor;
    }

    private static List<String> hertzAbove(double hertz) {
        List<String> ladder = new ArrayList<>();
        for (long step = (long) Math.floor(hertz / 10) * 10 + 10; step <= hertz * 10 && ladder.size() < 3000; step += 10) {
            ladder.add(step + " Hz");
        }
        return ladder;
    }

    // amplifiers

    private RatedAmplifier rated(Item.Amplifier amplifier) {
        Shown<Double> rated = amplifier.ratedWatts().with(amplifier.channels(), (watts, channels) -> watts * channels);
        Shown<Double> best = amplifier.efficiency().isGiven() ? amplifier.efficiency() : amplifier.outputClass()
                .map(name -> model.limit(name.equals("D") ? "efficiency-class-d" : "efficiency-class-ab").high());
        double volts = model.value("amplifier-rating-volts");
        Shown<Double> plausible = amplifier.input().ownFuseAmperes().with(best, (amperes, efficiency) -> Draw.plausibleWatts(amperes, volts, efficiency))
                .then(watts -> Shown.of(watts, () -> Model.print(amplifier.input().ownFuseAmperes().orElse(0.0), Dimension.CURRENT) + " x "
                        + Model.print(volts, Dimension.VOLTAGE) + " x " + Model.print(best.orElse(0.0), Dimension.RATIO)));
        draw(amplifier);
        return new RatedAmplifier(amplifier.path(), amplifier.at(), rated, plausible);
    }

    /** Current at the rating volts for each level, at the poor end of the efficiency where nobody gave one. */
    private void draw(Item.Amplifier amplifier) {
        double volts = model.value("amplifier-rating-volts");
        Shown<Boolean> classD = amplifier.outputClass().map(name -> name.equals("D"));
        Shown<Double> full = amplifier.efficiency().isGiven() ? amplifier.efficiency()
                : classD.map(d -> model.limit(d ? "efficiency-class-d" : "efficiency-class-ab").low());
        Shown<Double> output = outputs.outputWatts(amplifier);
        for (Level level : Level.values()) {
            double share = level.share(model);
            Shown<Double> amperes = amplifier.idleAmperes().with(output, (idle, watts) -> new double[] {idle, watts})
                    .with(full.with(classD, (efficiency, d) -> new double[] {efficiency, d ? 1 : 0}),
                            (power, stage) -> Draw.amplifierAmperes(power[0], power[1], stage[1] == 1, stage[0], share, volts));
            if (amperes.isGiven()) {
                model.numbers.put(amplifier.path() + ".draw-" + level.words().replace(' ', '-'), amperes.orElse(0.0), Dimension.CURRENT,
                        () -> Model.print(output.orElse(0.0) * share, Dimension.POWER) + " of output at " + Model.print(volts, Dimension.VOLTAGE)
                                + ", idle draw " + Model.print(amplifier.idleAmperes().orElse(0.0), Dimension.CURRENT));
            }
            if (amperes.isGiven() && share > 0) {
                model.numbers.put(amplifier.path() + ".efficiency-" + level.words().replace(' ', '-'),
                        Draw.amperes(output.orElse(0.0) * share, volts) / amperes.orElse(1.0), Dimension.RATIO, () -> "output over all that it draws, idle draw and all");
            }
        }
    }

    private void channels(Item.Amplifier amplifier, Consumer<Fact> facts) {
        if (!amplifier.channels().isGiven()) {
            facts.accept(new AmplifierChannel(amplifier.path() + ".channels", amplifier.at(), amplifier.channels().map(x -> true), Shown.of("")));
        }
        for (int channel = 1; channel <= amplifier.channels().orElse(0); channel++) {
            String terminal = amplifier.id() + ".ch-" + channel;
            String bridge = amplifier.id() + ".bridged-" + (channel + 1) / 2;
            boolean wired = outputs.all().stream().anyMatch(output -> output.wiring().id().equals(terminal) || output.wiring().id().equals(bridge));
            Setting setting = outputs.setting(terminal);
            Shown<String> use = outputs.set(terminal, setting == null ? null : setting.use(), "use", "whether a speaker hangs on " + terminal);
            Shown<Boolean> decided = use.isGiven() ? use.map(word -> word.equals("speaker") == wired) : wired ? Shown.of(true) : use.map(x -> true);
            facts.accept(new AmplifierChannel("settings." + terminal, setting == null ? amplifier.at() : setting.at(), decided,
                    Shown.of((wired ? "a speaker hangs on it" : "no speaker hangs on it") + (use.isGiven() ? ", the plan says " + use.orElse("") : ""))));
        }
    }
}
