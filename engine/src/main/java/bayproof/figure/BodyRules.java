package bayproof.figure;

import static bayproof.figure.Input.quantities;
import static bayproof.figure.Input.quantity;
import static bayproof.figure.Input.word;
import static bayproof.figure.Input.yesNo;
import static bayproof.figure.RuleFigure.AT;
import static bayproof.figure.RuleFigure.SUBJECT;
import static bayproof.units.Units.print;

import bayproof.figure.RuleFigure.Asked;
import bayproof.solve.Sums;
import bayproof.solve.sound.MeasuredTones;
import bayproof.units.Dimension;
import bayproof.vocabulary.AddedMass;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.BookedWork;
import bayproof.vocabulary.CooledItem;
import bayproof.vocabulary.CrashLoad;
import bayproof.vocabulary.DrivenTest;
import bayproof.vocabulary.EnclosureFit;
import bayproof.vocabulary.FirstPower;
import bayproof.vocabulary.HingeCrossing;
import bayproof.vocabulary.JoinedBus;
import bayproof.vocabulary.KeepOutKind;
import bayproof.vocabulary.KeptClear;
import bayproof.vocabulary.LaidRun;
import bayproof.vocabulary.MountedItem;
import bayproof.vocabulary.NearKeepOut;
import bayproof.vocabulary.RestraintStep;
import bayproof.vocabulary.SeatCrossing;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SoundChannel;
import bayproof.vocabulary.TurnOnOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Rules on routing, mounting, integration and the work, asked by hand. */
final class BodyRules {
    private static final Shown<Boolean> YES = Shown.of(true);
    private static final Shown<String> NOTHING = Shown.of("");
    private static final Shown<Double> ZERO = Shown.of(0.0);
    private static final Shown<Attestation> NOBODY = Shown.of(new Attestation("", "", ""));

    /** As a plan writes them. */
    private static final List<String> FASTENERS = List.of("bolt-nut", "rivet-nut", "stud", "self-tapping", "self-drilling", "strap", "clip", "adhesive");
    private static final List<String> THREADS = List.of("M4", "M5", "M6", "M8", "M10", "screw-4", "screw-5", "band");

    private BodyRules() {
    }

    static List<RuleFigure> all() {
        List<RuleFigure> all = new ArrayList<>(routing());
        all.addAll(mounting());
        all.addAll(integration());
        all.addAll(work());
        return all;
    }

    private static List<RuleFigure> routing() {
        return List.of(keepOut("clear-of-exhaust", KeepOutKind.EXHAUST, "the nearest exhaust part"), keepOut("clear-of-fuel", KeepOutKind.FUEL, "the nearest fuel part"),
                keepOut("clear-of-moving-parts", KeepOutKind.MOVING, "the nearest moving part"),
                keepOut("clear-of-high-voltage", KeepOutKind.HIGH_VOLTAGE, "the nearest high-voltage cable or part"),
                keepOut("clear-of-restraint-paths", KeepOutKind.RESTRAINT_PATH, "the nearest airbag and the way it opens"),
                new RuleFigure("clear-of-brake", List.of(quantity("distance", Dimension.LENGTH, "clear distance to the nearest brake line"),
                        yesNo("moves", "whether an end of the run sits on the engine")), "distance=20 mm moves=no", given -> Asked.of(
                        new NearKeepOut(SUBJECT, AT, KeepOutKind.BRAKE, YES, given.shownYes("moves"), given.shown("distance"), YES))),
                new RuleFigure("nothing-mounted-in-restraint-path", List.of(quantity("distance", Dimension.LENGTH, "clear distance to the nearest airbag and the way it opens")),
                        "distance=40 mm", given -> Asked.of(new KeptClear(SUBJECT, AT, KeptClear.ITEM, KeepOutKind.RESTRAINT_PATH, YES, given.shown("distance"), YES))),
                new RuleFigure("ground-clear-of-fuel", List.of(quantity("distance", Dimension.LENGTH, "clear distance from the screw to the nearest fuel part")),
                        "distance=100 mm", given -> Asked.of(new KeptClear(SUBJECT, AT, KeptClear.GROUND, KeepOutKind.FUEL, YES, given.shown("distance"), YES))),
                new RuleFigure("bend-kept", List.of(quantity("radius", Dimension.LENGTH, "inner radius of the tightest bend"), quantity("diameter", Dimension.LENGTH,
                        "outer diameter of the cable")), "radius=30 mm diameter=11 mm", given -> new Asked(new LaidRun(SUBJECT, AT, YES, NOTHING, ZERO,
                        Shown.of(Sums.share(given.number("radius"), given.number("diameter"))), NOTHING, null, null), print(given.number("radius"), Dimension.LENGTH) + " / "
                        + print(given.number("diameter"), Dimension.LENGTH))),
                new RuleFigure("run-supported", List.of(quantity("spacing", Dimension.LENGTH, "largest distance between supports")), "spacing=40 cm", given -> Asked.of(
                        new LaidRun(SUBJECT, AT, YES, NOTHING, given.shown("spacing"), ZERO, NOTHING, null, null))),
                new RuleFigure("hinge-slack", List.of(quantity("slack", Dimension.LENGTH, "spare length at the hinge")), "slack=40 mm", given -> Asked.of(
                        new HingeCrossing(SUBJECT, AT, YES, NOTHING, given.shown("slack"), null))),
                new RuleFigure("seat-slack", List.of(quantity("slack", Dimension.LENGTH, "spare length at the seat"),
                        quantity("travel", Dimension.LENGTH, "longest way that the seat moves")), "slack=200 mm travel=280 mm", given -> Asked.of(
                        new SeatCrossing(SUBJECT, AT, YES, given.shown("slack"), given.shown("travel"), null))));
    }

    private static RuleFigure keepOut(String rule, KeepOutKind kind, String what) {
        return new RuleFigure(rule, List.of(quantity("distance", Dimension.LENGTH, "clear distance to " + what)), "distance=40 mm", given -> Asked.of(
                new NearKeepOut(SUBJECT, AT, kind, YES, Shown.of(false), given.shown("distance"), YES)));
    }

    // mounting

    private static List<RuleFigure> mounting() {
        return List.of(
                new RuleFigure("cooling-clearance", List.of(quantity("clearance", Dimension.LENGTH, "free space over the cooling surface"),
                        quantity("needed", Dimension.LENGTH, "what its data sheet asks for").optional()), "clearance=35 mm", given -> Asked.of(new CooledItem(SUBJECT, AT,
                        given.shown("clearance"), given.has("needed"), given.has("needed") ? given.shown("needed") : ZERO))),
                new RuleFigure("enclosure-fits-space", List.of(quantity("space", Dimension.LENGTH, "clear size of the space in one direction, seats in their worst place"),
                        quantity("box", Dimension.LENGTH, "outer size of the enclosure in that direction")), "space=420 mm box=400 mm", given -> new Asked(
                        new EnclosureFit(SUBJECT, AT, "the room left on each side", Shown.of(Sums.roomEachSide(given.number("space"), given.number("box"))), null),
                        "(" + print(given.number("space"), Dimension.LENGTH) + " - " + print(given.number("box"), Dimension.LENGTH) + ") / 2")),
                new RuleFigure("tip-within-free-depth", List.of(quantity("depth", Dimension.LENGTH, "clear depth behind the panel"),
                        quantity("tip", Dimension.LENGTH, "how far the fastener reaches behind it")), "depth=17 mm tip=12 mm", given -> new Asked(
                        new MountedItem(SUBJECT, AT, YES, NOTHING, Shown.of(Sums.lengthLeft(given.number("depth"), given.number("tip"))), null, YES, NOTHING, null),
                        print(given.number("depth"), Dimension.LENGTH) + " - " + print(given.number("tip"), Dimension.LENGTH))),
                new RuleFigure("payload-kept", List.of(quantities("mass", Dimension.MASS, "mass of each thing that is mounted"),
                        quantity("left", Dimension.MASS, "what the vehicle may still carry, seats filled")), "mass=24 kg, 28 kg, 9 kg left=220 kg", given -> new Asked(
                        new AddedMass(SUBJECT, AT, YES, Shown.of(given.sum("mass")), given.shown("left")), "")),
                new RuleFigure("holds-in-a-crash", List.of(Input.count("fasteners", "number of fasteners"), word("fastener", FASTENERS, "kind of fastener"),
                        word("thread", THREADS, "its thread, or size of the screw"), quantity("mass", Dimension.MASS, "mass of what they hold")),
                        "fasteners=4 fastener=rivet-nut thread=M5 mass=4 kg", BodyRules::crash));
    }

    private static Asked crash(Given given) throws FigureMistake {
        String name = "holds-" + given.word("fastener") + "-" + given.word("thread").toLowerCase(Locale.ROOT);
        if (!given.limits().has(name)) {
            throw FigureMistake.of("There is no figure for a " + given.word("fastener") + " of " + given.word("thread") + ".", "bayproof why holds-in-a-crash lists those that there are.");
        }
        double newtons = given.limit(name) * given.count("fasteners", 0);
        double mass = given.number("mass");
        return new Asked(new CrashLoad(SUBJECT, AT, YES, Shown.of(mass >= given.limit("crash-mass")), mass > given.limit("crash-mass-stop"),
                Shown.of(Sums.heldShare(newtons, mass)), null), print(newtons, Dimension.FORCE) + " / (" + print(mass, Dimension.MASS) + " x " + Sums.GRAVITY + " m/s2)");
    }

    // integration

    private static List<RuleFigure> integration() {
        return List.of(
                new RuleFigure("bus-resistance-fits", List.of(quantity("resistance", Dimension.RESISTANCE, "resistance across the pair with the supply off")), "resistance=62 ohm",
                        given -> Asked.of(bus(ZERO, given.shown("resistance")))),
                new RuleFigure("bus-stub-short", List.of(quantity("length", Dimension.LENGTH, "length of the stub")), "length=25 cm",
                        given -> Asked.of(bus(given.shown("length"), ZERO))),
                new RuleFigure("turn-on-budget", List.of(quantities("draw", Dimension.CURRENT, "turn-on current of each input that hangs on it"),
                        quantity("most", Dimension.CURRENT, "most current the output gives")), "draw=20 mA, 20 mA, 15 mA most=100 mA", given -> new Asked(
                        new TurnOnOutput(SUBJECT, AT, Shown.of(given.sum("draw")), given.shown("most")), "added up")),
                new RuleFigure("summed-outputs-agree", List.of(quantities("delay", Dimension.TIME, "delay of each output that is summed"),
                        word("polarity", List.of("same", "different"), "whether they have one polarity")), "delay=0 ms, 1.4 ms polarity=same", given -> new Asked(
                        new SoundChannel(SUBJECT, AT, YES, Shown.of(given.word("polarity").equals("same")),
                                Shown.of(MeasuredTones.delaySpread(given.numbers("delay"))), YES, NOTHING, YES, YES),
                        "the latest less the earliest")));
    }

    private static JoinedBus bus(Shown<Double> stub, Shown<Double> ohms) {
        return new JoinedBus(SUBJECT, AT, Shown.of("item"), Shown.of("high-speed"), NOTHING, YES, stub, ohms, null);
    }

    // work

    private static List<RuleFigure> work() {
        return List.of(
                new RuleFigure("hours-within-booking", List.of(quantities("hours", Dimension.TIME, "hours of each step, waiting included"), quantity("booked", Dimension.TIME, "hours booked")),
                        "hours=2 h, 6 h, 3 h booked=10 h", given -> new Asked(new BookedWork(SUBJECT, AT, Shown.of(given.sum("hours")), given.shown("booked")), "added up")),
                new RuleFigure("restraint-wait-kept", List.of(quantity("waited", Dimension.TIME, "wait between battery off and the first plug"),
                        quantity("needed", Dimension.TIME, "what the vehicle maker's data asks for").optional()), "waited=5 min", given -> Asked.of(new RestraintStep(SUBJECT, AT, YES,
                        given.shown("waited"), ZERO, NOBODY, given.has("needed"), given.has("needed") ? given.shown("needed") : ZERO, YES))),
                new RuleFigure("restraint-wait-waited", List.of(quantity("waited", Dimension.TIME, "time really waited between battery off and the first plug"),
                        quantity("needed", Dimension.TIME, "what the vehicle maker's data asks for").optional()), "waited=12 min", given -> Asked.of(new RestraintStep(SUBJECT, AT, YES,
                        ZERO, given.shown("waited"), NOBODY, given.has("needed"), given.has("needed") ? given.shown("needed") : ZERO, YES))),
                new RuleFigure("first-power-with-a-small-fuse", List.of(quantity("fuse", Dimension.CURRENT, "fuse that the first power comes through")), "fuse=5 A",
                        given -> Asked.of(new FirstPower(SUBJECT, AT, given.shown("fuse")))),
                new RuleFigure("road-tested", List.of(quantity("time", Dimension.TIME, "time that was driven with the audio on")), "time=20 min",
                        given -> Asked.of(new DrivenTest(SUBJECT, AT, given.shown("time"), NOBODY))));
    }
}
