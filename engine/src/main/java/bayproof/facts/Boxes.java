package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.read.BoxPort;
import bayproof.read.BoxShape;
import bayproof.read.CoilNet;
import bayproof.read.DriverData;
import bayproof.read.Item;
import bayproof.solve.acoustic.ClosedBox;
import bayproof.solve.acoustic.Driver;
import bayproof.solve.acoustic.Enclosure;
import bayproof.solve.acoustic.NetVolume;
import bayproof.solve.acoustic.OuterShape;
import bayproof.solve.acoustic.PlayedBand;
import bayproof.solve.acoustic.Port;
import bayproof.solve.acoustic.VentedBox;
import bayproof.solve.sound.SpeakerNet;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The enclosures of a job as the solver takes them: outer shape, air, drivers as wired, and what drives them. */
public final class Boxes {
    /**
     * An enclosure with its speakers as driven.
     *
     * @param enclosure the circuit
     * @param band      what it is driven with
     */
    public record Driven(Enclosure enclosure, PlayedBand band) {
    }

    private final Model model;
    private final SpeakerNets nets;
    private final Outputs outputs;
    private final OutputFacts cables;
    private final Bands bands;

    Boxes(Model model, SpeakerNets nets, Outputs outputs, OutputFacts cables) {
        this.model = model;
        this.nets = nets;
        this.outputs = outputs;
        this.cables = cables;
        this.bands = new Bands(model, outputs);
    }

    /** Those of a job, with its outputs and cables. */
    static Boxes of(Model model, Amplifiers amplifiers) {
        Outputs outputs = new Outputs(model, amplifiers);
        return new Boxes(model, amplifiers.nets(), outputs, new OutputFacts(model, amplifiers, outputs, new SpeakerFacts(model, amplifiers)));
    }

    /** Speakers that say they are built into an enclosure. */
    List<Item.Speaker> speakers(Item.Enclosure box) {
        return model.job.itemsOf(Item.Speaker.class).stream().filter(speaker -> speaker.enclosure().orElse("").equals(box.id())).toList();
    }

    static Shown<Boolean> isVented(Item.Enclosure box) {
        return box.air().type().map("vented"::equals);
    }

    /** The outside; null where something of it is missing. */
    static OuterShape shape(Item.Enclosure box, Gathered gathered) {
        BoxShape shape = box.shape();
        String form = gathered.one(shape.form(), "");
        double height = gathered.number(box.heightMetres());
        double width = gathered.number(box.widthMetres());
        double depth = gathered.number(box.depthMetres());
        return switch (form) {
            case "box" -> OuterShape.box(height, width, depth);
            case "wedge" -> new OuterShape(OuterShape.Form.WEDGE, height, width, depth, gathered.number(shape.topMetres()), 0, 0);
            case "l-shape" -> new OuterShape(OuterShape.Form.L, height, width, depth, gathered.number(shape.topMetres()), gathered.number(shape.stepMetres()), 0);
            case "pair" -> new OuterShape(OuterShape.Form.PAIR, height, width, depth, depth, 0, gathered.number(shape.apartMetres()));
            default -> null;
        };
    }

    private static boolean isSlot(BoxPort port) {
        return port.slotWidthMetres().isGiven() || port.slotHeightMetres().isGiven();
    }

    /** Open area of one port, walls added to each side. */
    private static double area(BoxPort port, double wall, Gathered gathered) {
        return isSlot(port) ? (gathered.number(port.slotWidthMetres()) + 2 * wall) * (gathered.number(port.slotHeightMetres()) + 2 * wall)
                : Port.roundArea(gathered.number(port.diameterMetres()) + 2 * wall);
    }

    /** Diameter of a port, or of the round one with the area of a slot. */
    static Shown<Double> diameter(BoxPort port) {
        if (!isSlot(port)) {
            return port.diameterMetres();
        }
        Gathered gathered = new Gathered();
        double area = area(port, 0, gathered);
        return gathered.then(() -> 2 * Math.sqrt(area / Math.PI));
    }

    /** What of an enclosure is air, filling apart; null where something is missing. */
    NetVolume net(Item.Enclosure box, Gathered gathered) {
        OuterShape shape = shape(box, gathered);
        double wall = gathered.number(box.shape().wallMetres());
        double bracing = gathered.number(box.air().bracingCubicMetres());
        double inSpeakers = 0;
        for (Item.Speaker speaker : speakers(box)) {
            inSpeakers += gathered.number(speaker.driver().displacementCubicMetres());
        }
        double inPort = 0;
        if (gathered.one(isVented(box), false)) {
            BoxPort port = box.port();
            inPort = Port.displacement(gathered.one(port.count(), 1), area(port, gathered.number(port.wallMetres()), gathered), gathered.number(port.lengthMetres()));
        }
        return gathered.complete() ? new NetVolume(shape.innerCubicMetres(wall), inSpeakers, inPort, bracing) : null;
    }

    /** An enclosure whose speakers hang on outputs that give the same volts, with all that its circuit needs; null where something is missing. */
    public Driven driven(Item.Enclosure box, Gathered gathered) {
        NetVolume net = net(box, gathered);
        boolean filled = gathered.one(box.air().filling(), "none").equals("filled");
        boolean vented = gathered.one(isVented(box), false);
        List<Item.Speaker> speakers = speakers(box);
        if (speakers.isEmpty()) {
            gathered.need(new Need("items", "the speaker that is built into " + box.id(), box.at()));
            return null;
        }
        DriverData data = speakers.get(0).driver();
        // What differs is asked of each of them: none comes first.
        if (!speakers.stream().allMatch(other -> alike(data, other.driver()))) {
            speakers.forEach(one -> gathered.need(new Need(one.path() + ".resonance", "speakers of one kind in one enclosure", one.at())));
        }
        for (Item.Speaker speaker : speakers) {
            gathered.number(speaker.driver().resonanceHertz());
            gathered.plain(speaker.driver().mechanicalQ());
            gathered.plain(speaker.driver().electricalQ());
            gathered.number(speaker.driver().equivalentCubicMetres());
            gathered.number(speaker.driver().coneSquareMetres());
        }
        double resonance = gathered.number(data.resonanceHertz());
        double mechanicalQ = gathered.plain(data.mechanicalQ());
        double electricalQ = gathered.plain(data.electricalQ());
        double equivalent = gathered.number(data.equivalentCubicMetres());
        double cone = gathered.number(data.coneSquareMetres());
        Electric electric = electric(speakers, gathered);
        PlayedBand band = band(electric, gathered);
        if (!gathered.complete() || net.cubicMetres() <= 0) {
            return null;
        }
        Driver driver = new Driver(resonance, mechanicalQ, electricalQ, equivalent, cone, electric.coilOhms * speakers.size())
                .several(speakers.size(), electric.coilOhms).withSeries(electric.wireOhms);
        double air = net.felt(filled ? model.value("filling-gain") : 0);
        return new Driven(vented ? new VentedBox(driver, air, port(box), 1 / model.value("box-leakage")) : new ClosedBox(driver, air), band);
    }

    static Port port(Item.Enclosure box) {
        BoxPort port = box.port();
        return new Port(port.count().orElse(1), area(port, 0, new Gathered()), port.lengthMetres().orElse(0.0));
    }

    private static boolean alike(DriverData one, DriverData other) {
        return one.resonanceHertz().orElse(0.0).equals(other.resonanceHertz().orElse(0.0))
                && one.equivalentCubicMetres().orElse(0.0).equals(other.equivalentCubicMetres().orElse(0.0))
                && one.coneSquareMetres().orElse(0.0).equals(other.coneSquareMetres().orElse(0.0))
                && one.electricalQ().map(Object::toString).orElse("").equals(other.electricalQ().map(Object::toString).orElse(""))
                && one.mechanicalQ().map(Object::toString).orElse("").equals(other.mechanicalQ().map(Object::toString).orElse(""));
    }

    /** Coils and wires of all speakers of a box, the outputs that drive them side by side. */
    private record Electric(double coilOhms, double wireOhms, double volts, String terminal) {
    }

    private Electric electric(List<Item.Speaker> speakers, Gathered gathered) {
        Set<Output> driving = new LinkedHashSet<>();
        for (Item.Speaker speaker : speakers) {
            List<Output> on = outputs.of(speaker);
            if (on.isEmpty()) {
                gathered.need(new Need("speaker-wiring", "what " + speaker.id() + " hangs on", speaker.at()));
            }
            driving.addAll(on);
        }
        double coilSiemens = 0;
        double allSiemens = 0;
        double volts = 0;
        for (Output output : driving) {
            double coils = gathered.number(coilOhms(output));
            coilSiemens += 1 / coils;
            allSiemens += 1 / (coils + gathered.number(cables.wireOhms(output)));
            volts = Math.max(volts, gathered.number(outputs.cappedVolts(output)));
        }
        return new Electric(1 / coilSiemens, 1 / allSiemens - 1 / coilSiemens, volts, driving.stream().findFirst().map(one -> one.wiring().id()).orElse(null));
    }

    /** DC resistance of the coils on an output; each must be given. */
    private Shown<Double> coilOhms(Output output) {
        return output.wiring().net().then(text -> {
            CoilNet net = CoilNet.parse(text);
            List<Need> open = new ArrayList<>();
            for (Window window : nets.windows(net)) {
                open.add(new Need(window.path(), "DC resistance of this voice coil", output.wiring().at()));
            }
            Shown<Double> ohms = open.isEmpty() ? nets.direct(net, true).map(SpeakerNet::directOhms) : Shown.missing(open);
            // Through a capacitor in series no such circuit is worked out.
            return ohms.then(one -> one > 0 && !Double.isInfinite(one) ? Shown.of(one)
                    : Shown.missing(new Need(output.wiring().path() + ".net", "a net whose coils all have a path for DC", output.wiring().at())));
        });
    }

    private PlayedBand band(Electric electric, Gathered gathered) {
        return new PlayedBand(model.value("lowest-programme"), model.value("highest-box-tone"), electric.volts,
                electric.terminal == null ? List.of() : bands.filters(electric.terminal, null, gathered));
    }
}
