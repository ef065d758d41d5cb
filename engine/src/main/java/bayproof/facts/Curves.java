package bayproof.facts;

import bayproof.facts.Boxes.Driven;
import bayproof.facts.Curve.Line;
import bayproof.facts.Outputs.Output;
import bayproof.facts.SolvedCorner.Settled;
import bayproof.graph.Link;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Setting;
import bayproof.solve.acoustic.Band;
import bayproof.solve.acoustic.Crossing;
import bayproof.solve.acoustic.Enclosure;
import bayproof.solve.acoustic.ThirdOctaves;
import bayproof.solve.sound.Delay;
import bayproof.solve.sound.SpeakerNet;
import bayproof.units.Dimension;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

/** Curves of a job: bands and their sum, enclosures against their neighbors in volume, loads, and volts along the main feed. */
public final class Curves {
    private static final double LOWEST_HERTZ = 20;
    private static final double HIGHEST_HERTZ = 20_000;
    private static final double BOX_FROM = 10;
    private static final double BOX_TO = 315;
    private static final double DECIBEL_FLOOR = -42;
    private static final int PER_BAND = 12;

    private final Model model;
    private final Outputs outputs;
    private final Bands bands;
    private final Boxes boxes;
    private final Amplifiers amplifiers;

    private Curves(Job job) {
        model = new Model(job);
        amplifiers = new Amplifiers(model);
        outputs = new Outputs(model, amplifiers);
        bands = new Bands(model, outputs);
        boxes = Boxes.of(model, amplifiers);
    }

    /** Curves of a job for which everything is shown; what lacks a figure has no curve. */
    public static List<Curve> of(Job job) {
        Curves curves = new Curves(job);
        List<Curve> all = new ArrayList<>();
        curves.responses(all);
        curves.enclosures(all);
        curves.impedances(all);
        curves.feed(all);
        return all;
    }

    private static Line line(String name, double from, double to, DoubleUnaryOperator of) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        Set<Double> centers = new LinkedHashSet<>();
        // Points at even parts of the third octaves: every exact center is one of them.
        for (int i = ThirdOctaves.nearest(from) * PER_BAND; i <= ThirdOctaves.nearest(to) * PER_BAND; i++) {
            double hertz = ThirdOctaves.exactHertz((double) i / PER_BAND);
            double value = of.applyAsDouble(hertz);
            // What lies below the picture is not drawn along its edge.
            if (value >= DECIBEL_FLOOR) {
                x.add(hertz);
                y.add(value);
                if (i % PER_BAND == 0) {
                    centers.add(hertz);
                }
            }
        }
        return new Line(name, false, x, y, centers);
    }

    private static String file(String id) {
        return id.replace('.', '-');
    }

    // bands

    private List<Output> above(Output output) {
        Setting setting = outputs.setting(output.wiring().id());
        List<String> names = setting == null ? List.of() : setting.bandAbove().orElse(List.of());
        return outputs.all().stream().filter(one -> names.contains(one.wiring().id())).toList();
    }

    private void responses(List<Curve> all) {
        Set<Output> higher = new LinkedHashSet<>();
        outputs.all().forEach(output -> higher.addAll(above(output)));
        for (Output lowest : outputs.all()) {
            if (!higher.contains(lowest) && !above(lowest).isEmpty()) {
                chain(new ArrayList<>(List.of(lowest)), all);
            }
        }
    }

    /** Every way up from the lowest band is one side of the system; a circle ends where it closes. */
    private void chain(List<Output> way, List<Curve> all) {
        List<Output> next = above(way.get(way.size() - 1)).stream().filter(one -> !way.contains(one)).toList();
        if (next.isEmpty()) {
            response(way, all);
        }
        for (Output one : next) {
            way.add(one);
            chain(way, all);
            way.remove(one);
        }
    }

    private void response(List<Output> way, List<Curve> all) {
        Gathered gathered = new Gathered();
        double speed = Delay.metresPerSecond(model.value("cabin-temperature"));
        List<Band> side = way.stream().map(output -> bands.band(output, null, speed, gathered)).toList();
        if (!gathered.complete()) {
            return;
        }
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < side.size(); i++) {
            Band band = side.get(i);
            lines.add(line(String.join(", ", way.get(i).speakers()), LOWEST_HERTZ, HIGHEST_HERTZ, hertz -> band.at(hertz).decibels()));
        }
        Line sum = line("sum", LOWEST_HERTZ, HIGHEST_HERTZ, hertz -> Math.max(DECIBEL_FLOOR, Crossing.sum(side.stream(), hertz)));
        lines.add(new Line(sum.name(), true, sum.x(), sum.y(), Set.of()));
        String top = way.get(way.size() - 1).wiring().id();
        all.add(new Curve("response-" + file(top), "Bands up to " + top + " and their sum at the listener", "frequency, Hz", "level, dB", true, DECIBEL_FLOOR, lines));
    }

    // enclosures

    private void enclosures(List<Curve> all) {
        for (Item.Enclosure box : model.job.itemsOf(Item.Enclosure.class)) {
            Driven driven = boxes.driven(box, new Gathered());
            if (driven != null) {
                Enclosure planned = driven.enclosure();
                List<Line> lines = new ArrayList<>();
                for (Enclosure one : BoxNeighbors.around(planned)) {
                    double more = one.netCubicMetres() - planned.netCubicMetres();
                    lines.add(line((more == 0 ? "as planned, " : more < 0 ? "a tenth less, " : "a tenth more, ") + Model.print(one.netCubicMetres(), Dimension.VOLUME)
                            + ", 3 dB down at " + Model.print(one.cornerHertz(), Dimension.FREQUENCY), BOX_FROM, BOX_TO, one::responseDecibels));
                }
                all.add(new Curve("enclosure-" + file(box.id()), "Response of " + box.id() + " against its neighbors in volume", "frequency, Hz", "level, dB", true, DECIBEL_FLOOR, lines));
            }
        }
    }

    // loads

    private void impedances(List<Curve> all) {
        for (Output output : outputs.all()) {
            DoubleUnaryOperator ohms = ohms(output);
            if (ohms != null) {
                List<Line> lines = new ArrayList<>(List.of(line(String.join(", ", output.speakers()), BOX_FROM, HIGHEST_HERTZ, ohms)));
                (output.bridged() ? output.amplifier().minimumLoadBridgedOhms() : output.amplifier().minimumLoadOhms())
                        .map(least -> lines.add(line("least rated load", BOX_FROM, HIGHEST_HERTZ, hertz -> least)));
                all.add(new Curve("impedance-" + file(output.wiring().id()), "Load on " + output.wiring().id() + ", wires counted, coils without inductance",
                        "frequency, Hz", "impedance, ohm", true, 0, lines));
            }
        }
    }

    /** A load that changes with frequency: that of speakers in an enclosure of their own, or of a net with a capacitor; null for any other. */
    private DoubleUnaryOperator ohms(Output output) {
        for (Item.Enclosure box : model.job.itemsOf(Item.Enclosure.class)) {
            List<Item.Speaker> inside = boxes.speakers(box);
            if (!inside.isEmpty() && inside.equals(outputs.speakersOf(output))) {
                Driven driven = boxes.driven(box, new Gathered());
                return driven == null ? null : driven.enclosure()::impedanceOhms;
            }
        }
        SpeakerNet net = output.wiring().net().then(text -> amplifiers.nets().nominal(CoilNet.parse(text))).orElse(null);
        return net != null && net.hasCapacitor() ? net::ohmsAt : null;
    }

    // volts

    private void feed(List<Curve> all) {
        SolvedCorner bad = new SolvedNetworks(model, amplifiers).bad();
        FeedTree tree = model.feeds();
        List<Link> way = longest(tree);
        if (!bad.isWhole() || way.isEmpty()) {
            return;
        }
        String end = null;
        List<Line> lines = new ArrayList<>();
        for (Level level : List.of(Level.LOUD_PROGRAMME, Level.FULL_SINE)) {
            Settled settled = bad.settled(State.ON_BATTERY, level);
            if (settled.point() != null) {
                Ladder ladder = ladder(tree, way, settled);
                lines.add(new Line(level.words(), false, ladder.metres, ladder.volts, Set.copyOf(ladder.metres)));
                end = ladder.end;
            }
        }
        if (!lines.isEmpty()) {
            all.add(new Curve("feed-volts", "Volts along the feed to " + end + ", on battery, every window at its bad end", "way from the post, m", "volts against the post's negative, V", false,
                    Double.NaN, lines));
        }
    }

    private record Ladder(List<Double> metres, List<Double> volts, String end) {
    }

    /** The way to the amplifier with the longest feed, post first. */
    private List<Link> longest(FeedTree tree) {
        List<Link> longest = List.of();
        double most = 0;
        for (Item.Amplifier amplifier : model.job.itemsOf(Item.Amplifier.class)) {
            List<Link> back = tree.back(amplifier.id() + ".supply");
            double metres = back.stream().mapToDouble(this::metres).sum();
            if (metres > most) {
                most = metres;
                longest = new ArrayList<>(back);
                Collections.reverse(longest);
            }
        }
        return longest;
    }

    private double metres(Link link) {
        return link.run() == null ? 0 : model.lengthMetres(link.run()).orElse(0.0);
    }

    private Ladder ladder(FeedTree tree, List<Link> way, Settled settled) {
        String at = tree.isPost(way.get(0).from()) ? way.get(0).from() : way.get(0).to();
        String negative = at.substring(0, at.indexOf('.')) + (at.endsWith(".positive") ? ".negative" : at.endsWith(".output") ? ".case" : ".common");
        List<Double> metres = new ArrayList<>(List.of(0.0));
        List<Double> volts = new ArrayList<>(List.of(settled.point().voltsAcross(at, negative)));
        double gone = 0;
        for (Link link : way) {
            at = link.other(at);
            gone += metres(link);
            metres.add(gone);
            volts.add(settled.point().voltsAcross(at, negative));
        }
        return new Ladder(metres, volts, at.substring(0, at.indexOf('.')));
    }
}
