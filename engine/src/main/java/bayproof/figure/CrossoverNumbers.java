package bayproof.figure;

import static bayproof.figure.Input.quantity;
import static bayproof.units.Units.print;

import bayproof.figure.NumberFigure.Value;
import bayproof.figure.NumberFigure.Worked;
import bayproof.solve.acoustic.Driver;
import bayproof.solve.acoustic.Filter;
import bayproof.solve.acoustic.ProgrammePower;
import bayproof.solve.sound.SpeakerLoads;
import bayproof.units.Dimension;
import java.util.List;

/** Numbers of the parts before a speaker, of what a programme gives its band, and of what it makes of that. */
final class CrossoverNumbers {
    private static final double HIGHEST = 1e6;
    /** Level at 1 m of one acoustic watt that goes out evenly into half space: 10 log10(rho c/(2 pi)) + 94 dB of 1 Pa. */
    private static final double HALF_SPACE_DECIBELS = 112.1;

    private CrossoverNumbers() {
    }

    static List<NumberFigure> all() {
        return List.of(
                new NumberFigure("coil", "coil before a speaker for a corner", List.of(quantity("corner", Dimension.FREQUENCY, "the corner"),
                        quantity("load", Dimension.RESISTANCE, "nominal impedance of the speaker")), "corner=3 kHz load=4 ohm", "L = R/(2 pi f): textbook",
                        given -> Worked.of(SpeakerLoads.cornerHenries(given.number("load"), given.number("corner")), Dimension.INDUCTANCE,
                                print(given.number("load"), Dimension.RESISTANCE) + " / (2 pi x " + print(given.number("corner"), Dimension.FREQUENCY) + ")")),
                new NumberFigure("pad", "two resistors before a speaker that make it quieter and keep its load", List.of(quantity("fall", Dimension.LEVEL, "how much quieter"),
                        quantity("load", Dimension.RESISTANCE, "nominal impedance of the speaker")), "fall=3 dB load=4 ohm",
                        "R1 = (1 - k) R, R2 = k R/(1 - k), k = 10^(-fall/20): textbook", CrossoverNumbers::pad),
                new NumberFigure("programme-share", "share of a programme's power between two corners", List.of(
                        quantity("from", Dimension.FREQUENCY, "lower corner").optional(), quantity("to", Dimension.FREQUENCY, "upper corner").optional()),
                        "from=80 Hz to=3.5 kHz", "IEC 60268-1:1985 table II, third octaves of IEC 61260-1", CrossoverNumbers::share),
                new NumberFigure("efficiency", "share of the electrical power that a speaker makes sound of", List.of(
                        quantity("resonance", Dimension.FREQUENCY, "free-air resonance, fs"), quantity("volume", Dimension.VOLUME, "volume as stiff as the suspension, Vas"),
                        quantity("electrical-q", Dimension.RATIO, "electrical Q, Qes, in percent")), "resonance=30 Hz volume=40 L electrical-q=50 %",
                        "rho (Bl)^2 Sd^2/(2 pi c Re Mms^2) = 4 pi^2 fs^3 Vas/(c^3 Qes), air of 344 m/s: lecture notes 34870 of a technical university, lesson 7",
                        CrossoverNumbers::efficiency));
    }

    private static Worked pad(Given given) throws FigureMistake {
        if (given.number("fall") <= 0) {
            throw FigureMistake.of("A pad only makes quieter: fall is above 0 dB.", "Such as: fall=3 dB.");
        }
        SpeakerLoads.Pad pad = SpeakerLoads.Pad.of(given.number("load"), given.number("fall"));
        return new Worked(List.of(new Value("in series", pad.seriesOhms(), Dimension.RESISTANCE), new Value("across the speaker", pad.acrossOhms(), Dimension.RESISTANCE)),
                "", "k = 10^(-" + print(given.number("fall"), Dimension.LEVEL) + " / 20), R = " + print(given.number("load"), Dimension.RESISTANCE));
    }

    private static double from(Given given) {
        return given.has("from") ? given.number("from") : 0;
    }

    private static double to(Given given) {
        return given.has("to") ? given.number("to") : HIGHEST;
    }

    private static double between(Given given) throws FigureMistake {
        if (to(given) <= from(given)) {
            throw FigureMistake.of("The upper corner lies above the lower one.", "Such as: from=80 Hz to=3.5 kHz.");
        }
        return ProgrammePower.share(from(given), to(given));
    }

    /** Share of full sine that a loud programme has between two corners. */
    static double loudShare(Given given) throws FigureMistake {
        return given.named("level-loud-programme").value() * between(given);
    }

    /** How far a high-pass has fallen at a resonance. */
    static double fallDecibels(Given given) throws FigureMistake {
        Filter.Shape shape = given.word("shape").equals("butterworth") ? Filter.Shape.BUTTERWORTH : Filter.Shape.LINKWITZ_RILEY;
        int order = given.count("order", 0);
        if (!Filter.exists(shape, order)) {
            throw FigureMistake.of("A " + given.word("shape") + " filter of order " + order + " does not exist.", "Butterworth has orders 1 to 8, Linkwitz-Riley even ones.");
        }
        return -new Filter(shape, order, Filter.Pass.HIGH, given.number("corner")).at(given.number("resonance")).decibels();
    }

    private static Worked share(Given given) throws FigureMistake {
        double from = from(given);
        double to = to(given);
        double share = between(given);
        return new Worked(List.of(new Value("", share, Dimension.RATIO), new Value("as a level", 10 * Math.log10(Math.max(share, Double.MIN_NORMAL)), Dimension.LEVEL)),
                "Modern music with much bass has more below 100 Hz than this spectrum of 1985 (common practice, no source).",
                "third octaves " + (from > 0 ? "from " + print(from, Dimension.FREQUENCY) : "from the lowest") + (to < HIGHEST ? " to " + print(to, Dimension.FREQUENCY) : " on"));
    }

    private static Worked efficiency(Given given) {
        // Area of the cone, resistance and mechanical losses cancel out.
        double share = new Driver(given.number("resonance"), 1, given.number("electrical-q"), given.number("volume"), 1, 1).efficiency();
        return new Worked(List.of(new Value("", share, Dimension.RATIO), new Value("level of 1 W at 1 m in half space", HALF_SPACE_DECIBELS + 10 * Math.log10(share), Dimension.LEVEL)),
                "", "4 pi^2 x (" + print(given.number("resonance"), Dimension.FREQUENCY) + ")^3 x " + print(given.number("volume"), Dimension.VOLUME) + " / ((344 m/s)^3 x "
                        + print(given.number("electrical-q"), Dimension.RATIO) + ")");
    }
}
