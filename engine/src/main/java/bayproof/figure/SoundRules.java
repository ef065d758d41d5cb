package bayproof.figure;

import static bayproof.figure.Input.count;
import static bayproof.figure.Input.quantities;
import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.word;
import static bayproof.figure.Input.yesNo;
import static bayproof.figure.RuleFigure.AT;
import static bayproof.figure.RuleFigure.SUBJECT;
import static bayproof.units.Units.print;

import bayproof.figure.RuleFigure.Asked;
import bayproof.solve.Sums;
import bayproof.solve.sound.Levels;
import bayproof.solve.sound.MeterReading;
import bayproof.solve.sound.SpeakerLoads;
import bayproof.solve.sound.SpeakerWire;
import bayproof.units.Dimension;
import bayproof.vocabulary.BridgedOutput;
import bayproof.vocabulary.CheckedOutput;
import bayproof.vocabulary.CoilSharing;
import bayproof.vocabulary.DrivenSpeaker;
import bayproof.vocabulary.GainSetting;
import bayproof.vocabulary.GainStructure;
import bayproof.vocabulary.GuardedSpeaker;
import bayproof.vocabulary.LoadResistor;
import bayproof.vocabulary.MatchedOutputs;
import bayproof.vocabulary.MeteredOutput;
import bayproof.vocabulary.OutputLoad;
import bayproof.vocabulary.ProgrammeHeat;
import bayproof.vocabulary.RatedAmplifier;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SignalInput;
import bayproof.vocabulary.SlopedSpeaker;
import bayproof.vocabulary.SoundExposure;
import bayproof.vocabulary.SpeakerCable;
import bayproof.vocabulary.WeighedBox;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Rules on speakers, signal levels and hearing, asked by hand. */
final class SoundRules {
    private static final double CHECK_HERTZ = 1000;
    private static final Shown<Boolean> YES = Shown.of(true);
    private static final Shown<Double> ZERO = Shown.of(0.0);

    private SoundRules() {
    }

    static List<RuleFigure> all() {
        List<RuleFigure> all = new ArrayList<>(loads());
        all.addAll(speakers());
        all.addAll(gains());
        all.addAll(levels());
        return all;
    }

    private static List<RuleFigure> loads() {
        Input net = Input.net("the coils on the output with their nominal impedances");
        return List.of(
                new RuleFigure("amplifier-load-minimum", List.of(net, quantity("least", Dimension.RESISTANCE, "least rated load of the output as it is used"),
                        yesNo("bridged", "whether the output is bridged").or("no")), "net=\"4 ohm | 4 ohm\" least=4 ohm bridged=yes", given -> new Asked(
                        new OutputLoad(SUBJECT, AT, given.yes("bridged"), load(given), YES, given.shown("least"), null), SoundNumbers.text(given))),
                new RuleFigure("bridged-half-minimum", List.of(net, quantity("least", Dimension.RESISTANCE, "least rated load of one channel")),
                        "net=2 ohm + 2 ohm least=2 ohm", given -> new Asked(new BridgedOutput(SUBJECT, AT, load(given).map(SpeakerLoads::bridgedHalfOhms),
                        given.shown("least"), YES, null), "(" + SoundNumbers.text(given) + ") / 2")),
                new RuleFigure("coils-share-evenly", List.of(net), "net=\"4 ohm | 4 ohm + 4 ohm\"", given -> new Asked(new CoilSharing(SUBJECT, AT, YES,
                        Shown.of(given.net().shareRatio(CHECK_HERTZ))), SoundNumbers.text(given) + ", at 1 kHz")),
                new RuleFigure("lead-reads-as-worked-out", meterInputs(), "reading=2.1 ohm net=\"4 ohm | 4 ohm\" wire=0.1 ohm", given -> {
                    MeterReading window = SoundNumbers.window(given);
                    return new Asked(new MeteredOutput(SUBJECT, AT, given.shown("reading"), Shown.of(window.low()), Shown.of(window.high()), Shown.of(window.high()), YES, Shown.of(""), Shown.of("")),
                            print(window.low(), Dimension.RESISTANCE) + " to " + print(window.high(), Dimension.RESISTANCE) + ": " + SoundNumbers.windowText(given));
                }),
                new RuleFigure("speaker-cable-large-enough", SoundNumbers.wireInputs(), "load=4 ohm size=16 AWG length=5 m", given -> new Asked(
                        new SpeakerCable(SUBJECT, AT, Shown.of(SpeakerWire.shareOfLoad(SoundNumbers.wireOhms(given), given.number("load"))), null),
                        SoundNumbers.wireText(given) + " / " + print(given.number("load"), Dimension.RESISTANCE))),
                new RuleFigure("speaker-lead-off-body", List.of(quantity("resistance", Dimension.RESISTANCE, "resistance from a speaker wire to the body")),
                        "resistance=200 ohm", given -> Asked.of(new CheckedOutput(SUBJECT, AT, given.shown("resistance"), ZERO))),
                new RuleFigure("load-resistor-strong-enough", List.of(quantity("volts", Dimension.VOLTAGE, "clean volts of the output at the loud volume step"),
                        quantity("resistance", Dimension.RESISTANCE, "ohms of the resistor"), quantity("rated", Dimension.POWER, "heat it stands where it is mounted")),
                        "volts=5.5 V resistance=4 ohm rated=10 W", given -> {
                            double heat = Levels.watts(given.number("volts"), given.number("resistance"));
                            return new Asked(new LoadResistor(SUBJECT, AT, Shown.of(Sums.share(given.number("rated"), heat)), YES, ZERO, Shown.of("metal")),
                                    print(given.number("rated"), Dimension.POWER) + " / " + print(heat, Dimension.POWER));
                        }),
                new RuleFigure("load-resistor-fits", List.of(net, quantity("wanted", Dimension.RESISTANCE, "load that the radio looks for")),
                        "net=\"4 ohm | 10 ohm\" wanted=4 ohm", given -> new Asked(new LoadResistor(SUBJECT, AT, ZERO, YES, load(given).map(ohms ->
                        Math.abs(Sums.share(ohms, given.number("wanted")) - 1)), Shown.of("metal")), SoundNumbers.text(given) + " for "
                        + print(given.number("wanted"), Dimension.RESISTANCE))),
                new RuleFigure("left-matches-right", List.of(quantity("left", Dimension.RESISTANCE, "reading of the left side"), quantity("right", Dimension.RESISTANCE,
                        "reading of the right side")), "left=3.4 ohm right=3.7 ohm", given -> new Asked(new MatchedOutputs(SUBJECT, AT, YES,
                        Shown.of(MeterReading.apartShare(given.number("left"), given.number("right")))), "the difference over the smaller")),
                new RuleFigure("output-dc-small", List.of(quantity("volts", Dimension.VOLTAGE, "DC volts at the output, no speaker on it")), "volts=20 mV",
                        given -> Asked.of(new CheckedOutput(SUBJECT, AT, ZERO, given.shown("volts")))));
    }

    private static List<Input> meterInputs() {
        List<Input> inputs = new ArrayList<>(List.of(quantity("reading", Dimension.RESISTANCE, "the reading, tips touched together first and that taken off")));
        inputs.addAll(SoundNumbers.meterInputs());
        return inputs;
    }

    private static Shown<Double> load(Given given) {
        return Shown.of(SpeakerLoads.leastOhms(given.net()));
    }

    private static List<RuleFigure> speakers() {
        return List.of(
                new RuleFigure("power-suits-speaker", List.of(quantity("power", Dimension.POWER, "power that reaches the speaker"),
                        quantity("rating", Dimension.POWER, "what the speaker is rated for")), "power=120 W rating=100 W", given -> new Asked(new DrivenSpeaker(SUBJECT, AT, YES,
                        Shown.of(Levels.powerShare(given.number("power"), given.number("rating"))), null), print(given.number("power"), Dimension.POWER) + " / "
                        + print(given.number("rating"), Dimension.POWER))),
                new RuleFigure("programme-heat-within-rating", List.of(quantity("power", Dimension.POWER, "full-sine power of the output into the speaker"),
                        quantity("from", Dimension.FREQUENCY, "lower corner of its band").optional(), quantity("to", Dimension.FREQUENCY, "upper corner of its band").optional(),
                        quantity("rating", Dimension.POWER, "what the speaker is rated for")), "power=100 W from=3.5 kHz rating=25 W", given -> {
                            double watts = given.number("power") * CrossoverNumbers.loudShare(given);
                            return new Asked(new ProgrammeHeat(SUBJECT, AT, YES, Shown.of(Levels.powerShare(watts, given.number("rating"))),
                                    "what reaches the speaker of a loud programme, as a share of its rating", null), print(watts, Dimension.POWER) + " / " + print(given.number("rating"), Dimension.POWER));
                        }),
                new RuleFigure("box-weighed-with-contents", List.of(quantity("mass", Dimension.MASS, "mass written for the enclosure"),
                        quantity("boards", Dimension.MASS, "its boards and bracing"), quantity("speakers", Dimension.MASS, "all speakers in it")),
                        "mass=24 kg boards=13 kg speakers=10 kg", given -> new Asked(new WeighedBox(SUBJECT, AT,
                        Shown.of(given.number("mass") / (given.number("boards") + given.number("speakers")))), print(given.number("mass"), Dimension.MASS) + " / ("
                        + print(given.number("boards"), Dimension.MASS) + " + " + print(given.number("speakers"), Dimension.MASS) + ")")),
                new RuleFigure("high-pass-steep-enough", List.of(quantity("corner", Dimension.FREQUENCY, "corner of the high-pass"), quantity("resonance", Dimension.FREQUENCY,
                        "free-air resonance of the speaker"), word("shape", List.of("butterworth", "linkwitz-riley"), "family of the filter"), count("order", "its order, 1 to 8")),
                        "corner=3.5 kHz resonance=1.2 kHz shape=linkwitz-riley order=4", given -> new Asked(new SlopedSpeaker(SUBJECT, AT, YES,
                        Shown.of(CrossoverNumbers.fallDecibels(given)), null), "at " + print(given.number("resonance"), Dimension.FREQUENCY))),
                new RuleFigure("rated-output-plausible", List.of(quantities("power", Dimension.POWER, "rated output of each channel"),
                        quantities("fuses", Dimension.CURRENT, "the amplifier's own fuses"), SupplyNumbers.outputClass(), SupplyNumbers.efficiency(),
                        quantity("volts", Dimension.VOLTAGE, "supply volts").optional()), "power=100 W, 100 W, 100 W, 100 W fuses=30 A class=D", given -> new Asked(
                        new RatedAmplifier(SUBJECT, AT, Shown.of(given.sum("power")), Shown.of(SupplyNumbers.plausibleWatts(given))),
                        "fuses " + print(given.sum("fuses"), Dimension.CURRENT) + " x " + print(SupplyNumbers.volts(given), Dimension.VOLTAGE) + " x efficiency")),
                new RuleFigure("tweeter-high-passed", List.of(quantity("corner", Dimension.FREQUENCY, "high-pass corner before the speaker"),
                        quantity("lowest", Dimension.FREQUENCY, "lowest crossover of its data sheet")), "corner=2.5 kHz lowest=3 kHz", given -> Asked.of(
                        new GuardedSpeaker(SUBJECT, AT, YES, given.shown("corner"), given.shown("lowest"), null))));
    }

    // gains

    private static List<RuleFigure> gains() {
        Input target = quantity("target", Dimension.VOLTAGE, "AC volts to be set at the output");
        Input level = quantity("level", Dimension.LEVEL, "level of the test tone against full scale").or("0 dBFS");
        return List.of(
                new RuleFigure("gain-set-as-planned", List.of(quantity("measured", Dimension.VOLTAGE, "AC volts measured"), target), "measured=18.6 V target=19.5 V",
                        given -> new Asked(gain(ZERO, ZERO, ZERO, ZERO, ZERO, Shown.of(Sums.share(given.number("measured"), given.number("target")))),
                                print(given.number("measured"), Dimension.VOLTAGE) + " / " + print(given.number("target"), Dimension.VOLTAGE))),
                new RuleFigure("gain-target-within-output", List.of(target, level, quantity("power", Dimension.POWER, "rated power of one channel"),
                        quantity("load", Dimension.RESISTANCE, "load it is rated at"), yesNo("bridged", "whether the output is bridged").or("no")),
                        "target=12 V level=-5 dBFS power=95 W load=4 ohm", given -> new Asked(gain(Shown.of(asked(given)),
                        Shown.of(Levels.fullVolts(given.number("power"), given.number("load"), given.yes("bridged"))), ZERO, ZERO, ZERO, ZERO), askedText(given))),
                new RuleFigure("gain-within-range", List.of(target, level, quantity("arrives", Dimension.VOLTAGE, "volts that arrive at full scale"),
                        quantity("power", Dimension.POWER, "rated power of one channel"), quantity("load", Dimension.RESISTANCE, "load it is rated at"),
                        quantity("least-input", Dimension.VOLTAGE, "volts at the input for rated power, gain all the way up"),
                        quantity("most-input", Dimension.VOLTAGE, "volts at the input for rated power, gain all the way down"),
                        yesNo("bridged", "whether the output is bridged").or("no")),
                        "target=12 V level=-5 dBFS arrives=2 V power=95 W load=4 ohm least-input=0.2 V most-input=6 V", SoundRules::range));
    }

    private static double asked(Given given) {
        return Levels.voltsAt(given.number("target"), -given.number("level"));
    }

    private static String askedText(Given given) {
        return print(given.number("target"), Dimension.VOLTAGE) + " x 10^(" + print(-given.number("level"), Dimension.LEVEL) + " / 20)";
    }

    private static Asked range(Given given) {
        double full = Levels.fullVolts(given.number("power"), given.number("load"), given.yes("bridged"));
        return new Asked(gain(ZERO, ZERO, Shown.of(Levels.decibels(asked(given), given.number("arrives"))), Shown.of(Levels.decibels(full, given.number("most-input"))),
                Shown.of(Levels.decibels(full, given.number("least-input"))), ZERO), "20 log10(" + askedText(given) + " / " + print(given.number("arrives"), Dimension.VOLTAGE)
                + "); rated power is " + print(full, Dimension.VOLTAGE));
    }

    private static GainSetting gain(Shown<Double> asked, Shown<Double> full, Shown<Double> gain, Shown<Double> least, Shown<Double> most, Shown<Double> read) {
        return new GainSetting(SUBJECT, AT, ZERO, ZERO, ZERO, asked, full, gain, least, most, read, Shown.of(""), ZERO, null);
    }

    // levels and hearing

    private static List<RuleFigure> levels() {
        return List.of(
                new RuleFigure("input-not-overdriven", List.of(quantity("arrives", Dimension.VOLTAGE, "greatest clean volts that arrive"),
                        quantity("most", Dimension.VOLTAGE, "greatest clean volts the input takes")), "arrives=5 V most=4 V", given -> Asked.of(
                        new SignalInput(SUBJECT, AT, given.shown("arrives"), given.shown("most")))),
                new RuleFigure("one-gain-structure", List.of(quantities("level", Dimension.LEVEL, "level of each output's test tone")), "level=0 dBFS, -5 dBFS, -12 dBFS",
                        given -> new Asked(new GainStructure(SUBJECT, AT, Shown.of(Collections.max(given.numbers("level")) - Collections.min(given.numbers("level")))),
                                "the highest less the lowest")),
                new RuleFigure("staff-noise-dose", SupplyNumbers.doseInputs(), "level=95 dBA, 85 dBA time=1 h, 4 h", given -> new Asked(
                        new SoundExposure(SUBJECT, AT, Shown.of(SupplyNumbers.dose(given, "law")), ZERO), SupplyNumbers.doseText())),
                new RuleFigure("staff-noise-advice", SupplyNumbers.doseInputs(), "level=95 dBA, 85 dBA time=1 h, 4 h", given -> new Asked(
                        new SoundExposure(SUBJECT, AT, ZERO, Shown.of(SupplyNumbers.dose(given, "health"))), SupplyNumbers.doseText())));
    }
}
