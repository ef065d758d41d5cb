package bayproof.facts;

import bayproof.facts.Boxes.Driven;
import bayproof.facts.Outputs.Output;
import bayproof.read.Item;
import bayproof.read.Setting;
import bayproof.solve.acoustic.Air;
import bayproof.solve.acoustic.Band;
import bayproof.solve.acoustic.ClosedBox;
import bayproof.solve.acoustic.Filter;
import bayproof.solve.acoustic.Filter.Pass;
import bayproof.solve.acoustic.NetVolume;
import bayproof.solve.acoustic.OuterShape;
import bayproof.solve.acoustic.PlayedBand.Worst;
import bayproof.solve.acoustic.Port;
import bayproof.solve.acoustic.VentedBox;
import bayproof.units.Dimension;
import bayproof.vocabulary.BoxVolume;
import bayproof.vocabulary.ClosedResponse;
import bayproof.vocabulary.ConeTravel;
import bayproof.vocabulary.DrivenPort;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.PortedBox;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.WeighedBox;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Facts about the air in each enclosure, how its speakers respond in it, its port, and how far the cones travel. */
final class BoxFacts {
    private static final double LITRES = 1000;
    private static final double MILLIMETRES = 1000;
    private static final int MOST_STEPS = 200;
    private static final double ROUNDED = 1e9;

    private final Model model;
    private final Outputs outputs;
    private final Boxes boxes;
    private final Bands bands;

    BoxFacts(Model model, SpeakerNets nets, Outputs outputs, OutputFacts cables) {
        this.model = model;
        this.outputs = outputs;
        this.boxes = new Boxes(model, nets, outputs, cables);
        this.bands = new Bands(model, outputs);
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Enclosure box : model.job.itemsOf(Item.Enclosure.class)) {
            facts.accept(volume(box));
            facts.accept(weighed(box));
            facts.accept(ported(box));
            // That a speaker hangs on nothing is said once, where loads are.
            if (boxes.speakers(box).stream().allMatch(speaker -> outputs.of(speaker).isEmpty())) {
                continue;
            }
            Gathered gathered = new Gathered();
            Driven driven = boxes.driven(box, gathered);
            if (driven == null && gathered.complete()) {
                gathered.need(new Need(box.path() + ".wall", "walls and contents that leave air in " + box.id(), box.at()));
            }
            facts.accept(closed(box, driven, gathered));
            facts.accept(drivenPort(box, driven, gathered));
            facts.accept(travel(box, driven, gathered));
        }
    }

    private static double rounded(double value) {
        return Math.rint(value * ROUNDED) / ROUNDED;
    }

    private static String litres(double cubicMetres) {
        return Model.print(cubicMetres, Dimension.VOLUME);
    }

    private static String hertz(double hertz) {
        return Model.print(hertz, Dimension.FREQUENCY);
    }

    // air

    private BoxVolume volume(Item.Enclosure box) {
        Gathered gathered = new Gathered();
        NetVolume net = boxes.net(box, gathered);
        double wanted = 0;
        for (Item.Speaker speaker : boxes.speakers(box)) {
            wanted += gathered.number(speaker.driver().boxCubicMetres());
        }
        if (boxes.speakers(box).isEmpty()) {
            gathered.need(new Need("items", "the speaker that is built into " + box.id(), box.at()));
        }
        double asked = wanted;
        Shown<Double> share = gathered.then(() -> rounded(net.cubicMetres() / asked), () -> "(" + litres(net.grossCubicMetres()) + " inside - "
                + litres(net.speakers()) + " speakers - " + litres(net.port()) + " port - " + litres(net.bracing()) + " bracing) / " + litres(asked));
        if (net != null) {
            model.numbers.put(box.path() + ".net-volume", net.cubicMetres(), Dimension.VOLUME, () -> "inside of the walls less speakers, port and bracing");
        }
        return new BoxVolume(box.path(), box.at(), share, share.isGiven() ? "the net volume of " + litres(net.cubicMetres()) + " against what its speakers want"
                : "the net volume against what its speakers want", size(box, share.orElse(1.0) < 1));
    }

    private WeighedBox weighed(Item.Enclosure box) {
        Gathered gathered = new Gathered();
        NetVolume net = boxes.net(box, gathered);
        OuterShape shape = Boxes.shape(box, gathered);
        double speakers = 0;
        for (Item.Speaker speaker : boxes.speakers(box)) {
            speakers += gathered.number(speaker.driver().massKilograms());
        }
        if (boxes.speakers(box).isEmpty()) {
            gathered.need(new Need("items", "the speaker that is built into " + box.id(), box.at()));
        }
        double written = gathered.number(box.fitting().massKilograms());
        double inside = speakers;
        double boards = gathered.complete() ? (shape.innerCubicMetres(0) - net.grossCubicMetres() + net.bracing()) * LITRES * model.value("board-liter") : Double.NaN;
        return new WeighedBox(box.path(), box.at(), gathered.then(() -> rounded(written / (boards + inside)), () -> mass(written) + " / (" + mass(boards) + " of boards + "
                + mass(inside) + " of speakers)"));
    }

    private static String mass(double kilograms) {
        return Model.print(kilograms, Dimension.MASS);
    }

    private static Knob size(Item.Enclosure box, boolean larger) {
        double planned = box.heightMetres().orElse(Double.NaN);
        return Double.isNaN(planned) ? null : Ladders.knob(() -> millimetres(planned, larger), "items", box.id(), "height");
    }

    private static List<String> millimetres(double planned, boolean larger) {
        List<String> ladder = new ArrayList<>();
        long at = Math.round(planned * MILLIMETRES);
        for (int step = 1; step <= MOST_STEPS; step++) {
            at += larger ? 1 : -1;
            if (at > 0) {
                ladder.add(at + " mm");
            }
        }
        return ladder;
    }

    // closed

    private ClosedResponse closed(Item.Enclosure box, Driven driven, Gathered gathered) {
        Shown<Boolean> closed = box.air().type().map("closed"::equals);
        if (driven == null || !(driven.enclosure() instanceof ClosedBox one)) {
            return new ClosedResponse(box.path(), box.at(), closed, gathered.then(() -> 0.0), "the peak of its response");
        }
        double peak = rounded(one.peakDecibels());
        String shape = "Qtc " + String.format(Locale.ROOT, "%.2f", one.totalQ()) + ", resonance " + hertz(one.resonanceHertz()) + ", 3 dB down at " + hertz(one.cornerHertz());
        model.numbers.put(box.path() + ".closed-resonance", one.resonanceHertz(), Dimension.FREQUENCY, () -> "fs sqrt(1 + Vas/Vb), wire counted");
        model.numbers.put(box.path() + ".closed-corner", one.cornerHertz(), Dimension.FREQUENCY, () -> "where its response has fallen 3 dB; " + shape);
        double flat = ClosedBox.volumeFor(one.driver(), Math.sqrt(0.5));
        return new ClosedResponse(box.path(), box.at(), closed, Shown.of(peak, () -> shape + (Double.isInfinite(flat) ? "" : "; flat without a peak from " + litres(flat) + " on")),
                "the peak of its response (" + shape + (peak > 0 ? ", peak at " + hertz(one.peakHertz()) : "") + ")");
    }

    // vented

    private Shown<Double> tuning(Item.Enclosure box) {
        Gathered air = new Gathered();
        NetVolume net = boxes.net(box, air);
        if (net != null && net.cubicMetres() <= 0) {
            air.need(new Need(box.path() + ".wall", "walls and contents that leave air in " + box.id(), box.at()));
        }
        boolean filled = box.air().filling().orElse("none").equals("filled");
        return air.then(() -> Boxes.isVented(box).orElse(false) ? Boxes.port(box).tuningHertz(Air.ROOM, net.felt(filled ? model.value("filling-gain") : 0)) : 1.0);
    }

    private PortedBox ported(Item.Enclosure box) {
        Shown<Double> tuning = tuning(box);
        if (tuning.isGiven() && Boxes.isVented(box).orElse(false)) {
            model.numbers.put(box.path() + ".tuning", tuning.orElse(0.0), Dimension.FREQUENCY, () -> "c/(2 pi) sqrt(S/(V L)), both ends counted");
        }
        Shown<Double> share = tuning.with(box.air().tuningHertz(), (is, wanted) -> rounded(is / wanted)).then(part -> Shown.of(part, () -> portText(box, tuning)));
        return new PortedBox(box.path(), box.at(), Boxes.isVented(box), share, box.port().clearMetres(), Boxes.diameter(box.port()), portLength(box, tuning));
    }

    private DrivenPort drivenPort(Item.Enclosure box, Driven driven, Gathered gathered) {
        Shown<Double> speed;
        String what = "the fastest air in the port";
        if (driven != null && driven.enclosure() instanceof VentedBox one) {
            Worst worst = driven.band().portMetresPerSecond(one);
            what += " at " + hertz(worst.hertz()) + ", " + Model.print(driven.band().volts(), Dimension.VOLTAGE) + " of full sine behind the planned filters";
            speed = Shown.of(rounded(worst.value()), () -> "driven circuit of cone, box and port, leaks counted");
        } else {
            speed = gathered.then(() -> 0.0);
        }
        Shown<Double> tuning = tuning(box);
        Shown<Double> cut = lowCut(box).with(tuning, (corner, own) -> rounded(corner / own)).then(part -> Shown.of(part,
                () -> hertz(lowCut(box).orElse(0.0)) + " / " + hertz(tuning.orElse(0.0))));
        return new DrivenPort(box.path(), box.at(), Boxes.isVented(box), speed, what, cut, cutCorner(box, tuning));
    }

    private String portText(Item.Enclosure box, Shown<Double> tuning) {
        NetVolume net = boxes.net(box, new Gathered());
        double wanted = box.air().tuningHertz().orElse(0.0);
        Port port = Boxes.port(box);
        double length = Port.lengthFor(Air.ROOM, port.count(), port.areaSquareMetres(), wanted, net.cubicMetres());
        return hertz(tuning.orElse(0.0)) + " against " + hertz(wanted) + "; in this air the port is to be "
                + (length > 0 ? Model.print(length, Dimension.LENGTH) + " long" : "smaller, for even without a tube it is too wide");
    }

    private Knob portLength(Item.Enclosure box, Shown<Double> tuning) {
        double planned = box.port().lengthMetres().orElse(Double.NaN);
        boolean longer = tuning.orElse(0.0) > box.air().tuningHertz().orElse(0.0);
        return Double.isNaN(planned) || !tuning.isGiven() ? null : Ladders.knob(() -> millimetres(planned, longer), "items", box.id(), "port-length");
    }

    private Shown<Double> lowCut(Item.Enclosure box) {
        Output output = boxes.speakers(box).stream().flatMap(speaker -> outputs.of(speaker).stream()).findFirst().orElse(null);
        if (output == null) {
            return Shown.missing(new Need("speaker-wiring", "what the speakers of " + box.id() + " hang on", box.at()));
        }
        Gathered gathered = new Gathered();
        List<Filter> filters = bands.filters(output.wiring().id(), Pass.HIGH, gathered);
        return gathered.then(() -> new Band(filters, false, 0).cornerHertz(Pass.HIGH));
    }

    private Knob cutCorner(Item.Enclosure box, Shown<Double> tuning) {
        Output output = boxes.speakers(box).stream().flatMap(speaker -> outputs.of(speaker).stream()).findFirst().orElse(null);
        Setting setting = output == null ? null : outputs.setting(output.wiring().id());
        return setting == null || !setting.highPass().cornerHertz().isGiven() || !tuning.isGiven() ? null
                : Ladders.knob(() -> CrossoverFacts.hertzToward(setting.highPass().cornerHertz().orElse(0.0), tuning.orElse(0.0)), "settings", setting.id(), "high-pass", "corner");
    }

    // travel

    private ConeTravel travel(Item.Enclosure box, Driven driven, Gathered gathered) {
        Shown<Double> linear = boxes.speakers(box).stream().map(speaker -> speaker.driver().travelMetres())
                .reduce((one, other) -> one.with(other, Math::min)).orElse(Shown.missing(new Need("items", "the speaker that is built into " + box.id(), box.at())));
        if (driven == null) {
            return new ConeTravel(box.path(), box.at(), gathered.then(() -> 0.0), linear, "the farthest travel of the cone to one side");
        }
        Worst worst = driven.band().travelMetres(driven.enclosure());
        return new ConeTravel(box.path(), box.at(), Shown.of(rounded(worst.value()), () -> "driven circuit, " + Model.print(driven.band().volts(), Dimension.VOLTAGE)
                + " of full sine behind the planned filters"), linear, "the farthest travel of the cone to one side, at " + hertz(worst.hertz()));
    }
}
