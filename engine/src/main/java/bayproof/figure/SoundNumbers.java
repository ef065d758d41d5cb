package bayproof.figure;

import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.size;
import static bayproof.figure.Input.yesNo;
import static bayproof.units.Units.print;

import bayproof.demand.Limit;
import bayproof.figure.NumberFigure.Value;
import bayproof.figure.NumberFigure.Worked;
import bayproof.read.SharedTables;
import bayproof.solve.sound.Delay;
import bayproof.solve.sound.Levels;
import bayproof.solve.sound.MeterReading;
import bayproof.solve.sound.SpeakerLoads;
import bayproof.solve.sound.SpeakerNet;
import bayproof.solve.sound.SpeakerNet.Coil;
import bayproof.solve.sound.SpeakerNet.Parallel;
import bayproof.solve.sound.SpeakerNet.Series;
import bayproof.solve.sound.SpeakerWire;
import bayproof.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Numbers of speakers, their wires and the levels before them. */
final class SoundNumbers {
    private static final double CHECK_HERTZ = 1000;
    private static final double REFERENCE_CELSIUS = 20;
    private static final String NETS = "series Z = sum Zi, parallel 1/Z = sum 1/Zi: textbook";

    private SoundNumbers() {
    }

    static List<NumberFigure> all() {
        List<NumberFigure> all = new ArrayList<>(speakers());
        all.addAll(wires());
        all.addAll(levels());
        return all;
    }

    private static List<NumberFigure> speakers() {
        return List.of(
                new NumberFigure("load", "load of voice coils on an amplifier output", List.of(Input.net("the coils with their nominal impedances"),
                        yesNo("bridged", "whether the output is bridged").or("no")), "net=\"4 ohm + 4 ohm | 4 ohm + 4 ohm\" bridged=yes",
                        NETS + "; each half of a bridge works as if into half: encyclopedia text on bridge-tied loads", given -> {
                            double ohms = SpeakerLoads.leastOhms(given.net());
                            List<Value> values = new ArrayList<>(List.of(new Value("", ohms, Dimension.RESISTANCE)));
                            if (given.yes("bridged")) {
                                values.add(new Value("each half works as if into", SpeakerLoads.bridgedHalfOhms(ohms), Dimension.RESISTANCE));
                            }
                            return new Worked(values, given.net().hasCapacitor() ? "The least from 20 Hz to 20 kHz." : "", text(given));
                        }),
                new NumberFigure("shares", "share of the power that each coil takes", List.of(Input.net("the coils with their nominal impedances")),
                        "net=\"4 ohm | 4 ohm + 4 ohm\"", NETS + ", at 1 kHz", given -> new Worked(given.net().sharesAt(CHECK_HERTZ).entrySet().stream()
                        .map(one -> new Value(one.getKey(), one.getValue(), Dimension.RATIO)).toList(), "", text(given))),
                new NumberFigure("meter-reading", "reading of an ohmmeter at the amplifier's end of a speaker cable", meterInputs(),
                        "net=\"4 ohm | 4 ohm\" wire=0.1 ohm", NETS + "; R = R20 (234.5 + T)/254.5 for copper", SoundNumbers::reading),
                new NumberFigure("corner", "corner of a capacitor before a speaker", List.of(quantity("capacitor", Dimension.CAPACITANCE, "the capacitor"),
                        quantity("load", Dimension.RESISTANCE, "nominal impedance of the speaker")), "capacitor=4.7 uF load=4 ohm", "f = 1/(2 pi R C): textbook",
                        given -> Worked.of(SpeakerLoads.cornerHertz(given.number("load"), given.number("capacitor")), Dimension.FREQUENCY, "1 / (2 pi x "
                                + print(given.number("load"), Dimension.RESISTANCE) + " x " + print(given.number("capacitor"), Dimension.CAPACITANCE) + ")")),
                new NumberFigure("capacitor", "capacitor before a speaker for a corner", List.of(quantity("corner", Dimension.FREQUENCY, "the corner"),
                        quantity("load", Dimension.RESISTANCE, "nominal impedance of the speaker")), "corner=3 kHz load=4 ohm", "C = 1/(2 pi R f): textbook",
                        given -> Worked.of(SpeakerLoads.cornerFarads(given.number("load"), given.number("corner")), Dimension.CAPACITANCE, "1 / (2 pi x "
                                + print(given.number("load"), Dimension.RESISTANCE) + " x " + print(given.number("corner"), Dimension.FREQUENCY) + ")")));
    }

    static String text(Given given) {
        return given.texts().get("net");
    }

    // the meter

    static List<Input> meterInputs() {
        return List.of(Input.net("the coils with their nominal impedances, or their DC resistances"),
                quantity("wire", Dimension.RESISTANCE, "both conductors of the cable").or("0 ohm"),
                yesNo("direct", "whether the coils are given by their DC resistances at 20 °C").or("no"));
    }

    /** Readings of the coils at one end of what their DC resistances can be. */
    private static SpeakerNet direct(Given given, boolean least) {
        Limit window = given.named("coil-resistance");
        return given.yes("direct") ? given.net() : scaled(given.net(), least ? window.low() : window.high());
    }

    private static SpeakerNet scaled(SpeakerNet net, double factor) {
        if (net instanceof Coil coil) {
            return new Coil(coil.id(), coil.ohms() * factor, coil.farads());
        }
        return net instanceof Series series ? new Series(series.members().stream().map(one -> scaled(one, factor)).toList())
                : new Parallel(((Parallel) net).members().stream().map(one -> scaled(one, factor)).toList());
    }

    static MeterReading window(Given given) throws FigureMistake {
        Limit heat = given.named("coil-temperature");
        MeterReading window = MeterReading.of(direct(given, true), direct(given, false), given.number("wire"), heat.low(), heat.high());
        if (Double.isInfinite(window.high())) {
            throw FigureMistake.of("The meter reads an open circuit: a capacitor lets no direct current through.", "Read behind the capacitor.");
        }
        return window;
    }

    static String windowText(Given given) {
        Limit heat = given.named("coil-temperature");
        Limit share = given.named("coil-resistance");
        return text(given) + (given.yes("direct") ? ", DC resistances" : ", DC resistances " + print(share.low(), Dimension.RATIO) + " to "
                + print(share.high(), Dimension.RATIO) + " of these") + ", wire " + print(given.number("wire"), Dimension.RESISTANCE) + ", "
                + print(heat.low(), Dimension.TEMPERATURE) + " to " + print(heat.high(), Dimension.TEMPERATURE);
    }

    private static Worked reading(Given given) throws FigureMistake {
        MeterReading window = window(given);
        Limit heat = given.named("coil-temperature");
        String same = MeterReading.ofFaults(direct(given, true), direct(given, false), given.number("wire"), heat.low(), heat.high()).stream()
                .filter(fault -> window.meets(fault.window())).map(fault -> fault.fault().words()).distinct().collect(Collectors.joining("; "));
        return new Worked(List.of(new Value("least", window.low(), Dimension.RESISTANCE), new Value("greatest", window.high(), Dimension.RESISTANCE)),
                same.isEmpty() ? "No single fault reads the same." : "A reading in it may not tell these apart: " + same + ". Lift one branch and read again.", windowText(given));
    }

    // wires

    private static List<NumberFigure> wires() {
        return List.of(
                new NumberFigure("wire-loss", "resistance of a speaker's wire, as a share of its load", wireInputs(quantity("volts", Dimension.VOLTAGE,
                        "AC volts at the amplifier").optional()), "load=4 ohm size=16 AWG length=5 m volts=20 V",
                        "Rw/R; the level falls by 20 log10(R/(R + Rw)): textbook; copper at 20 °C", SoundNumbers::wireLoss),
                new NumberFigure("damping", "damping factor at a speaker", wireInputs(quantity("output", Dimension.RESISTANCE,
                        "output impedance of the amplifier").or("0 ohm")), "load=4 ohm size=16 AWG length=5 m", "R/(Ro + Rw): textbook; copper at 20 °C",
                        given -> Worked.of(SpeakerWire.dampingFactor(given.number("load"), given.number("output"), wireOhms(given)), null,
                                print(given.number("load"), Dimension.RESISTANCE) + " / (" + print(given.number("output"), Dimension.RESISTANCE) + " + " + wireText(given) + ")")),
                new NumberFigure("longest-wire", "longest speaker wire, one way", List.of(quantity("load", Dimension.RESISTANCE, "load at its end"),
                        size("size", "size of each conductor"), ConductorNumbers.metal()), "load=4 ohm size=16 AWG", "the limit speaker-wire-share; copper at 20 °C", given -> {
                            double share = given.named("speaker-wire-share").steps().get(0).value();
                            double ohms = SharedTables.conductors().ohmsPerMetre(given.word("size"), given.word("metal"), REFERENCE_CELSIUS);
                            return Worked.of(SpeakerWire.longestMetres(given.number("load"), share, ohms), Dimension.LENGTH, print(given.number("load"), Dimension.RESISTANCE)
                                    + " x " + print(share, Dimension.RATIO) + " / (2 x " + print(ohms, Dimension.RESISTANCE) + " a meter)");
                        }));
    }

    static List<Input> wireInputs(Input... more) {
        List<Input> inputs = new ArrayList<>(List.of(quantity("load", Dimension.RESISTANCE, "load at the end of the wire"), size("size", "size of each conductor"),
                quantity("length", Dimension.LENGTH, "length of the cable, one way"), ConductorNumbers.metal()));
        inputs.addAll(List.of(more));
        return inputs;
    }

    static double wireOhms(Given given) {
        return SpeakerWire.loopOhms(SharedTables.conductors().ohmsPerMetre(given.word("size"), given.word("metal"), REFERENCE_CELSIUS), given.number("length"));
    }

    static String wireText(Given given) {
        return print(wireOhms(given), Dimension.RESISTANCE) + " of " + print(given.number("length"), Dimension.LENGTH) + " of " + given.word("size") + " there and back";
    }

    private static Worked wireLoss(Given given) {
        double wire = wireOhms(given);
        double load = given.number("load");
        List<Value> values = new ArrayList<>(List.of(new Value("", SpeakerWire.shareOfLoad(wire, load), Dimension.RATIO),
                new Value("level at the speaker", SpeakerWire.levelDecibels(wire, load), Dimension.LEVEL)));
        if (given.has("volts")) {
            values.add(new Value("amplifier gives", SpeakerWire.givenWatts(given.number("volts"), wire, load), Dimension.POWER));
            values.add(new Value("wire takes", SpeakerWire.lostWatts(given.number("volts"), wire, load), Dimension.POWER));
        }
        return new Worked(values, "", wireText(given) + " / " + print(load, Dimension.RESISTANCE));
    }

    // levels

    private static List<NumberFigure> levels() {
        return List.of(
                new NumberFigure("target-volts", "AC volts to set at an amplifier output, speakers off", List.of(quantity("power", Dimension.POWER, "power wanted"),
                        quantity("load", Dimension.RESISTANCE, "nominal load, never the meter's reading"), quantity("level", Dimension.LEVEL, "level of the test tone against full scale").or("0 dBFS")),
                        "power=95 W load=4 ohm level=-5 dBFS", "V = sqrt(P R) x 10^(level/20): textbook", given -> {
                            double full = Levels.targetVolts(given.number("power"), given.number("load"));
                            double volts = Levels.voltsAt(full, given.number("level"));
                            return new Worked(List.of(new Value("", volts, Dimension.VOLTAGE), new Value("peak, as a scope shows it", Levels.peakVolts(volts), Dimension.VOLTAGE)), "",
                                    "sqrt(" + print(given.number("power"), Dimension.POWER) + " x " + print(given.number("load"), Dimension.RESISTANCE) + ") x 10^("
                                            + print(given.number("level"), Dimension.LEVEL) + " / 20)");
                        }),
                new NumberFigure("power-of-volts", "power of AC volts in a load", List.of(quantity("volts", Dimension.VOLTAGE, "the volts"), quantity("load", Dimension.RESISTANCE, "nominal load")),
                        "volts=20 V load=4 ohm", "P = V^2/R: textbook", given -> Worked.of(Levels.watts(given.number("volts"), given.number("load")), Dimension.POWER,
                        print(given.number("volts"), Dimension.VOLTAGE) + "^2 / " + print(given.number("load"), Dimension.RESISTANCE))),
                new NumberFigure("delay", "delay of a speaker so that it arrives with the farthest", List.of(quantity("farthest", Dimension.LENGTH, "way from the farthest speaker to the ears"),
                        quantity("distance", Dimension.LENGTH, "way from this one"), quantity("air", Dimension.TEMPERATURE, "temperature of the air").or("20 °C")),
                        "farthest=1.8 m distance=0.9 m", "c = 331.3 + 0.606 T: textbook physics", given -> Worked.of(Delay.seconds(given.number("farthest"), given.number("distance"),
                        given.number("air")), Dimension.TIME, "(" + print(given.number("farthest"), Dimension.LENGTH) + " - " + print(given.number("distance"), Dimension.LENGTH)
                        + String.format(Locale.ROOT, ") / %.1f m/s", Delay.metresPerSecond(given.number("air"))))),
                new NumberFigure("gain", "gain from one voltage to another", List.of(quantity("in", Dimension.VOLTAGE, "volts that arrive"), quantity("out", Dimension.VOLTAGE, "volts wanted")),
                        "in=2 V out=20 V", "20 log10(out/in): textbook", given -> Worked.of(Levels.decibels(given.number("out"), given.number("in")), Dimension.LEVEL,
                        "20 log10(" + print(given.number("out"), Dimension.VOLTAGE) + " / " + print(given.number("in"), Dimension.VOLTAGE) + ")")));
    }
}
