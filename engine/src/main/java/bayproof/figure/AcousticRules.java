package bayproof.figure;

import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.yesNo;
import static bayproof.figure.RuleFigure.AT;
import static bayproof.figure.RuleFigure.SUBJECT;
import static bayproof.units.Units.print;

import bayproof.figure.RuleFigure.Asked;
import bayproof.solve.acoustic.Band;
import bayproof.solve.acoustic.ClosedBox;
import bayproof.solve.acoustic.Crossing;
import bayproof.solve.acoustic.Filter.Pass;
import bayproof.solve.acoustic.NetVolume;
import bayproof.solve.acoustic.OuterShape;
import bayproof.solve.acoustic.PlayedBand.Worst;
import bayproof.solve.sound.Delay;
import bayproof.units.Dimension;
import bayproof.vocabulary.BandCrossing;
import bayproof.vocabulary.BoxVolume;
import bayproof.vocabulary.ClosedResponse;
import bayproof.vocabulary.ConeTravel;
import bayproof.vocabulary.DelayedOutput;
import bayproof.vocabulary.DrivenPort;
import bayproof.vocabulary.PortedBox;
import bayproof.vocabulary.ResonantSpeaker;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SpeakerDepth;
import bayproof.vocabulary.SummedChannel;
import bayproof.vocabulary.WayIn;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Rules on enclosures, crossovers, delays and sums, asked by hand. */
final class AcousticRules {
    private static final String SPEAKER = "resonance=28 Hz mechanical-q=5 electrical-q=0.45 equivalent=60 L air=40 L resistance=3.2 ohm";
    private static final Shown<Boolean> YES = Shown.of(true);
    private static final Shown<Double> ZERO = Shown.of(0.0);

    private AcousticRules() {
    }

    static List<RuleFigure> all() {
        List<RuleFigure> all = new ArrayList<>(air());
        all.addAll(ports());
        all.addAll(fits());
        all.addAll(crossings());
        all.addAll(ways());
        return all;
    }

    private static List<Input> with(List<Input> inputs, List<Input> more) {
        List<Input> all = new ArrayList<>(inputs);
        all.addAll(more);
        return all;
    }

    private static String hertz(double value) {
        return print(value, Dimension.FREQUENCY);
    }

    // boxes

    private static List<RuleFigure> air() {
        return List.of(
                new RuleFigure("box-volume-fits-speaker", List.of(quantity("inside", Dimension.VOLUME, "room inside the walls"),
                        quantity("speakers", Dimension.VOLUME, "room the speakers take").or("0 L"), quantity("port", Dimension.VOLUME, "room the port takes").or("0 L"),
                        quantity("bracing", Dimension.VOLUME, "room that bracing and built-in parts take").or("0 L"), quantity("wanted", Dimension.VOLUME, "net volume the speakers want")),
                        "inside=36 L speakers=2.5 L port=1.5 L bracing=1 L wanted=35 L", AcousticRules::volume),
                new RuleFigure("closed-box-peak", DriverGiven.speaker(), SPEAKER, given -> {
                    ClosedBox box = new ClosedBox(DriverGiven.driver(given), given.number("air"));
                    return new Asked(new ClosedResponse(SUBJECT, AT, YES, Shown.of(box.peakDecibels()), "the peak of its response"), String.format(Locale.ROOT,
                            "Qtc = Qts sqrt(1 + Vas/Vb) = %.2f; resonance %s, 3 dB down at %s", box.totalQ(), hertz(box.resonanceHertz()), hertz(box.cornerHertz())));
                }),
                new RuleFigure("cone-within-travel", with(with(DriverGiven.driven(), DriverGiven.port().stream().map(one -> one.needed() ? one.optional() : one).toList()),
                        List.of(quantity("linear", Dimension.LENGTH, "linear travel to one side, Xmax"))), SPEAKER + " cone=320 cm2 volts=20 V high-pass=25 Hz linear=10 mm",
                        AcousticRules::travel));
    }

    private static Asked volume(Given given) {
        NetVolume net = new NetVolume(given.number("inside"), given.number("speakers"), given.number("port"), given.number("bracing"));
        return new Asked(new BoxVolume(SUBJECT, AT, Shown.of(net.cubicMetres() / given.number("wanted")), "the net volume against what its speakers want", null),
                print(net.cubicMetres(), Dimension.VOLUME) + " of air / " + print(given.number("wanted"), Dimension.VOLUME));
    }

    private static Asked travel(Given given) throws FigureMistake {
        if (given.has("diameter") != given.has("length")) {
            throw FigureMistake.of("A port has a diameter and a length.", "Give both, or neither for a closed box.");
        }
        Worst worst = DriverGiven.band(given).travelMetres(DriverGiven.box(given));
        return new Asked(new ConeTravel(SUBJECT, AT, Shown.of(worst.value()), given.shown("linear"), "the farthest travel of the cone to one side"),
                "driven circuit, " + print(given.number("volts"), Dimension.VOLTAGE) + " of full sine behind the filters; farthest at " + hertz(worst.hertz()));
    }

    // ports

    private static List<RuleFigure> ports() {
        Input air = quantity("air", Dimension.VOLUME, "net volume of air in the box");
        return List.of(
                new RuleFigure("port-tuned-as-wanted", with(DriverGiven.port(), List.of(air, quantity("wanted", Dimension.FREQUENCY, "tuning that is wanted"))),
                        "diameter=75 mm length=98 mm air=90 L wanted=31 Hz", given -> new Asked(new PortedBox(SUBJECT, AT, YES,
                        Shown.of(DriverGiven.tuning(given) / given.number("wanted")), ZERO, ZERO, null), hertz(DriverGiven.tuning(given)) + " / "
                        + hertz(given.number("wanted")) + "; c/(2 pi) sqrt(S/(V L)), both ends counted")),
                new RuleFigure("port-end-free", List.of(quantity("clear", Dimension.LENGTH, "free way from the ends of the port"),
                        quantity("diameter", Dimension.LENGTH, "diameter of the port")), "clear=80 mm diameter=75 mm", given -> Asked.of(new PortedBox(SUBJECT, AT, YES, ZERO,
                        given.shown("clear"), given.shown("diameter"), null))),
                new RuleFigure("port-air-speed", with(DriverGiven.driven(), DriverGiven.port()), SPEAKER
                        + " cone=320 cm2 volts=20 V high-pass=25 Hz high-pass-shape=butterworth diameter=100 mm length=150 mm", given -> {
                            Worst worst = DriverGiven.band(given).portMetresPerSecond(DriverGiven.vented(given));
                            return new Asked(new DrivenPort(SUBJECT, AT, YES, Shown.of(worst.value()), "the fastest air in the port", ZERO, null),
                                    "driven circuit of cone, box and port, leaks counted; fastest at " + hertz(worst.hertz()));
                        }),
                new RuleFigure("vented-box-has-low-cut", List.of(quantity("corner", Dimension.FREQUENCY, "high-pass corner before the speakers"),
                        quantity("tuning", Dimension.FREQUENCY, "tuning of box and port")), "corner=28 Hz tuning=31 Hz", given -> new Asked(new DrivenPort(SUBJECT, AT, YES, ZERO, "",
                        Shown.of(given.number("corner") / given.number("tuning")), null), hertz(given.number("corner")) + " / " + hertz(given.number("tuning")))));
    }

    // fits

    private static List<RuleFigure> fits() {
        return List.of(
                new RuleFigure("enclosure-passes-way-in", List.of(quantity("height", Dimension.LENGTH, "outer height of the box"), quantity("width", Dimension.LENGTH, "outer width"),
                        quantity("depth", Dimension.LENGTH, "outer depth, at its deepest"), quantity("opening-height", Dimension.LENGTH, "clear height of the smallest opening"),
                        quantity("opening-width", Dimension.LENGTH, "its clear width")), "height=400 mm width=900 mm depth=350 mm opening-height=1.10 m opening-width=420 mm",
                        given -> new Asked(new WayIn(SUBJECT, AT, Shown.of(OuterShape.box(given.number("height"), given.number("width"), given.number("depth"))
                                .wayInGapMetres(given.number("opening-height"), given.number("opening-width")))), "its two smaller sizes across the opening, half of what is left")),
                new RuleFigure("speaker-fits-its-place", List.of(quantity("clear", Dimension.LENGTH, "clear depth behind the face it is mounted on, glass all the way down"),
                        quantity("depth", Dimension.LENGTH, "mounting depth of the speaker"), yesNo("door", "whether glass comes down behind it")),
                        "clear=78 mm depth=66 mm door=yes", given -> new Asked(new SpeakerDepth(SUBJECT, AT, Shown.of(given.number("clear") - given.number("depth")), given.yes("door")),
                        print(given.number("clear"), Dimension.LENGTH) + " - " + print(given.number("depth"), Dimension.LENGTH))));
    }

    // crossovers

    private static List<RuleFigure> crossings() {
        Input low = quantity("low-pass", Dimension.FREQUENCY, "corner of the band below");
        Input high = quantity("high-pass", Dimension.FREQUENCY, "corner of the band above");
        List<Input> both = new ArrayList<>(DriverGiven.filter("low-pass", "band below").stream().map(one -> one.name().equals("low-pass") ? low : one).toList());
        both.addAll(DriverGiven.filter("high-pass", "band above").stream().map(one -> one.name().equals("high-pass") ? high : one).toList());
        both.add(quantity("later", Dimension.TIME, "how much later the band above arrives, delays and ways counted").or("0 ms"));
        both.add(yesNo("inverted", "whether one of the two is turned round").or("no"));
        return List.of(
                new RuleFigure("crossovers-meet", List.of(low, high), "low-pass=80 Hz high-pass=90 Hz", given -> {
                    double ratio = given.number("high-pass") / given.number("low-pass");
                    return new Asked(crossing(Shown.of(Math.max(ratio, 1 / ratio)), ZERO), "the higher over the lower");
                }),
                new RuleFigure("bands-add-up", both, "low-pass=3 kHz high-pass=3 kHz low-pass-shape=butterworth low-pass-order=2 high-pass-shape=butterworth high-pass-order=2 inverted=yes",
                        AcousticRules::sum),
                new RuleFigure("corner-above-resonance", List.of(quantity("corner", Dimension.FREQUENCY, "high-pass corner before the speaker"),
                        quantity("resonance", Dimension.FREQUENCY, "free-air resonance of the speaker, fs")), "corner=3 kHz resonance=1.2 kHz", given -> new Asked(
                        new ResonantSpeaker(SUBJECT, AT, YES, Shown.of(given.number("corner") / given.number("resonance")), null),
                        hertz(given.number("corner")) + " / " + hertz(given.number("resonance")))));
    }

    private static BandCrossing crossing(Shown<Double> apart, Shown<Double> sum) {
        return new BandCrossing(SUBJECT, AT, apart, YES, ZERO, ZERO, sum, "the level of both bands together", null);
    }

    private static Asked sum(Given given) throws FigureMistake {
        Band below = new Band(List.of(DriverGiven.filter(given, "low-pass", Pass.LOW)), false, 0);
        Band above = new Band(List.of(DriverGiven.filter(given, "high-pass", Pass.HIGH)), given.yes("inverted"), given.number("later"));
        Crossing crossing = new Crossing(below, above);
        return new Asked(crossing(ZERO, Shown.of(crossing.sumDecibels())), "at " + hertz(crossing.hertz()) + "; with the leads of one swapped "
                + print(new Crossing(below, above.reversed()).sumDecibels(), Dimension.LEVEL));
    }

    // delays and sums

    private static List<RuleFigure> ways() {
        return List.of(
                new RuleFigure("delay-matches-distance", List.of(quantity("delay", Dimension.TIME, "delay set at the output"),
                        quantity("distance", Dimension.LENGTH, "way from its speaker to the listener"), quantity("farthest", Dimension.LENGTH, "way of the farthest speaker of the system"),
                        quantity("start", Dimension.TIME, "delay set at the farthest speaker").or("0 ms")), "delay=4.4 ms distance=1.10 m farthest=2.60 m", AcousticRules::delay),
                new RuleFigure("sum-balanced", List.of(Input.quantities("gain", Dimension.LEVEL, "gain that each output is summed with")), "gain=0 dB, -3 dB", given -> new Asked(
                        new SummedChannel(SUBJECT, AT, YES, Shown.of(Collections.max(given.numbers("gain")) - Collections.min(given.numbers("gain")))), "the highest less the lowest")));
    }

    private static Asked delay(Given given) {
        double celsius = given.limit("cabin-temperature");
        double wanted = given.number("start") + Delay.seconds(given.number("farthest"), given.number("distance"), celsius);
        return new Asked(new DelayedOutput(SUBJECT, AT, Shown.of(Math.abs(given.number("delay") - wanted)), given.shown("delay"), null), "wanted: ("
                + print(given.number("farthest"), Dimension.LENGTH) + " - " + print(given.number("distance"), Dimension.LENGTH) + ") / "
                + print(Delay.metresPerSecond(celsius), Dimension.SPEED) + " + " + print(given.number("start"), Dimension.TIME) + " = " + print(wanted, Dimension.TIME));
    }
}
