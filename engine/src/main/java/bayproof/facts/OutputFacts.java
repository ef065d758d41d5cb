package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.graph.Link;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.solve.sound.MeterReading;
import bayproof.solve.sound.SpeakerLoads;
import bayproof.solve.sound.SpeakerNet;
import bayproof.solve.sound.SpeakerWire;
import bayproof.units.Dimension;
import bayproof.vocabulary.BridgedOutput;
import bayproof.vocabulary.CheckedOutput;
import bayproof.vocabulary.CoilSharing;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.MatchedOutputs;
import bayproof.vocabulary.MeteredOutput;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SpeakerCable;
import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Facts about what hangs on each amplifier output: its halves, its shares, its wires and what a meter reads there. */
final class OutputFacts {
    private static final double REFERENCE_CELSIUS = 20;
    /** Any frequency does for coils without a capacitor. */
    private static final double REFERENCE_HERTZ = 1000;
    /** Two loads of the same coils, whatever the rounding. */
    private static final double SAME_LOAD = 1e-9;

    private final Model model;
    private final SpeakerNets nets;
    private final Outputs outputs;
    private final SpeakerFacts loads;

    OutputFacts(Model model, Amplifiers amplifiers, Outputs outputs, SpeakerFacts loads) {
        this.model = model;
        this.nets = amplifiers.nets();
        this.outputs = outputs;
        this.loads = loads;
    }

    void collect(Consumer<Fact> facts) {
        for (Output output : outputs.all()) {
            String path = output.wiring().path();
            if (output.bridged()) {
                facts.accept(new BridgedOutput(path, output.wiring().at(), outputs.loadOhms(output).map(SpeakerLoads::bridgedHalfOhms),
                        output.amplifier().minimumLoadOhms(), output.amplifier().input().bridges().map(pairs -> pairs.contains(name(output))),
                        loads.rewire(output.wiring())));
            }
            if (output.coils().size() > 1) {
                facts.accept(sharing(output));
            }
            facts.accept(cable(output));
            facts.accept(metered(output));
            Output right = right(output);
            if (right != null) {
                facts.accept(matched(output, right));
            }
            facts.accept(new CheckedOutput(path, output.wiring().at(), output.wiring().toBodyOhms(), output.wiring().directVolts()));
        }
    }

    /** Its name on the amplifier. */
    private static String name(Output output) {
        return output.wiring().id().substring(output.wiring().id().indexOf('.') + 1);
    }

    // left and right

    /** The output behind one with an odd number; null where it has none. */
    private Output right(Output left) {
        if (left.bridged() || !name(left).matches("ch-[0-9]{0,2}[13579]")) {
            return null;
        }
        String wanted = left.amplifier().id() + ".ch-" + (Integer.parseInt(name(left).substring("ch-".length())) + 1);
        return outputs.all().stream().filter(output -> output.wiring().id().equals(wanted)).findFirst().orElse(null);
    }

    private MatchedOutputs matched(Output left, Output right) {
        Shown<Boolean> alike = outputs.loadOhms(left).with(outputs.loadOhms(right), (one, other) -> Math.abs(one - other) <= SAME_LOAD * one)
                .with(kinds(left).with(kinds(right), Set::equals), (load, kind) -> load && kind);
        return new MatchedOutputs(left.wiring().path(), left.wiring().at(), alike, left.wiring().readOhms().with(right.wiring().readOhms(), (one, other) -> new double[] {one, other})
                .then(both -> Shown.of(MeterReading.apartShare(both[0], both[1]), () -> left.wiring().id() + " " + Model.print(both[0], Dimension.RESISTANCE) + ", "
                        + right.wiring().id() + " " + Model.print(both[1], Dimension.RESISTANCE))));
    }

    // shares

    private CoilSharing sharing(Output output) {
        Shown<SpeakerNet> net = nets.nominal(CoilNet.parse(output.wiring().net().orElse("")));
        Shown<Boolean> alike = kinds(output).with(net, (all, built) -> all.size() == 1 && !built.hasCapacitor());
        return new CoilSharing(output.wiring().path(), output.wiring().at(), alike, net.then(built -> {
            Map<String, Double> shares = built.sharesAt(REFERENCE_HERTZ);
            return Shown.of(built.shareRatio(REFERENCE_HERTZ), () -> String.join(", ", shares.entrySet().stream()
                    .map(one -> one.getKey() + " " + Model.print(one.getValue(), Dimension.RATIO)).toList()));
        }));
    }

    /** Kinds of what hangs on an output. */
    private Shown<Set<String>> kinds(Output output) {
        Shown<Set<String>> types = Shown.of(Set.of());
        for (String id : output.speakers()) {
            Shown<String> type = model.job.items().get(id) instanceof Item.Speaker speaker ? speaker.data().plays() : Shown.of("passive-network");
            types = types.with(type, (before, one) -> {
                Set<String> more = new TreeSet<>(before);
                more.add(one);
                return more;
            });
        }
        return types;
    }

    // wires

    private SpeakerCable cable(Output output) {
        Shown<Double> wire = wireOhms(output);
        Shown<Double> share = wire.with(outputs.loadOhms(output), SpeakerWire::shareOfLoad).then(part -> Shown.of(part,
                () -> "both conductors " + Model.print(wire.orElse(0.0), Dimension.RESISTANCE) + " at 20 °C; "
                        + String.format(Locale.ROOT, "%.2f dB at the speaker, damping at most %.0f", SpeakerWire.levelDecibels(part, 1),
                        SpeakerWire.dampingFactor(1, 0, part))));
        if (share instanceof Shown.Given<Double> given) {
            model.numbers.put(output.wiring().path() + ".wire", wire.orElse(0.0), Dimension.RESISTANCE, given.calculation());
        }
        List<Run> runs = direct(output);
        return new SpeakerCable(output.wiring().path(), output.wiring().at(), share, runs.isEmpty() ? null : new Ladders(model).thicker(runs.get(0)));
    }

    /**
     * Resistance of the wires of an output at 20 °C, round trip: its own runs lie side by side, and a run from one speaker to the next
     * counts in full. A jumper on one speaker counts nothing.
     */
    Shown<Double> wireOhms(Output output) {
        List<Run> direct = direct(output);
        if (direct.isEmpty()) {
            return Shown.missing(new Need("runs", "the run from " + output.wiring().id() + " to a speaker", output.wiring().at()));
        }
        Shown<Double> siemens = Shown.of(0.0);
        for (Run run : direct) {
            siemens = siemens.with(loopOhms(run, output.wiring().id()), (sum, ohms) -> sum + 1 / ohms);
        }
        Shown<Double> wire = siemens.map(sum -> 1 / sum);
        for (Shown<Double> ohms : onward(output)) {
            wire = wire.with(ohms, Double::sum);
        }
        return wire;
    }

    private List<Run> direct(Output output) {
        return model.wiring.at(output.wiring().id()).stream().filter(link -> link.kind() == Link.Kind.RUN).map(Link::run).toList();
    }

    /** Resistance of each line of runs from one speaker of the output to another one. */
    private List<Shown<Double>> onward(Output output) {
        List<Shown<Double>> lines = new ArrayList<>();
        for (Run run : model.job.runs().values()) {
            for (String near : List.of(run.from().orElse(""), run.to().orElse(""))) {
                Item from = model.job.itemOf(near);
                String far = from == null ? "" : model.wiring.farEnd(run, near);
                Item to = model.job.itemOf(far);
                // Each line is met from both of its ends.
                if (from != null && to != null && from != to && near.compareTo(far) < 0 && output.speakers().contains(from.id())
                        && output.speakers().contains(to.id())) {
                    lines.add(loopOhms(run, near));
                }
            }
        }
        return lines;
    }

    /** Both conductors of a run and of what goes on from it through joints, the longest way where it branches. */
    private Shown<Double> loopOhms(Run run, String near) {
        return loopOhms(model.wiring.of(run), near, new HashSet<>());
    }

    private Shown<Double> loopOhms(Link link, String near, Set<Link> before) {
        String far = link.other(near);
        Shown<Double> onward = Shown.of(0.0);
        if (before.add(link) && model.job.itemOf(far) instanceof Item.Joint joint) {
            for (Link next : model.wiring.at(far)) {
                if (next.kind() == Link.Kind.RUN && !before.contains(next)) {
                    onward = onward.with(loopOhms(next, far, before), Math::max);
                }
            }
            onward = onward.with(joint.ohms(), (ohms, each) -> ohms + 2 * each);
        }
        return loopOhms(link.run()).with(onward, Double::sum);
    }

    private Shown<Double> loopOhms(Run run) {
        return run.size().with(run.metal(), (size, metal) -> model.conductors().ohmsPerMetre(size, metal, REFERENCE_CELSIUS))
                .with(model.lengthMetres(run), SpeakerWire::loopOhms);
    }

    // the meter

    private MeteredOutput metered(Output output) {
        String path = output.wiring().path();
        CoilNet net = output.wiring().net().isGiven() ? CoilNet.parse(output.wiring().net().orElse("")) : null;
        if (net == null) {
            Shown<Double> missing = output.wiring().net().map(text -> 0.0);
            return new MeteredOutput(path, output.wiring().at(), output.wiring().readOhms(), missing, missing, missing,
                    missing.map(x -> true), missing.map(x -> ""), missing.map(x -> ""));
        }
        double cold = model.limit("coil-temperature").low();
        double warm = model.limit("coil-temperature").high();
        Shown<Double> wire = wireOhms(output);
        Shown<SpeakerNet> least = nets.direct(net, true);
        Shown<SpeakerNet> greatest = nets.direct(net, false);
        Shown<MeterReading> window = least.with(greatest, (low, high) -> new SpeakerNet[] {low, high})
                .with(wire, (both, ohms) -> MeterReading.of(both[0], both[1], ohms, cold, warm));
        Shown<List<MeterReading.OfFault>> faults = least.with(greatest, (low, high) -> new SpeakerNet[] {low, high})
                .with(wire, (both, ohms) -> MeterReading.ofFaults(both[0], both[1], ohms, cold, warm));
        note(path, window);
        Shown<String> doubtful = faults.with(output.wiring().readOhms(), (all, reading) -> words(all, one -> one.window().holds(reading)));
        Shown<String> alike = faults.with(window, (all, planned) -> words(all, one -> one.window().meets(planned)));
        return new MeteredOutput(path, output.wiring().at(), output.wiring().readOhms(), window.then(one -> end(one.low(), wire, "least")),
                window.then(one -> end(one.high(), wire, "greatest")), expected(window, net), doubtful.map(String::isEmpty), doubtful, alike);
    }

    private static String words(List<MeterReading.OfFault> faults, Predicate<MeterReading.OfFault> wanted) {
        return faults.stream().filter(wanted).map(one -> one.fault().words()).distinct().collect(Collectors.joining("; "));
    }

    private Shown<Double> end(double ohms, Shown<Double> wire, String which) {
        return Shown.of(shown(ohms), () -> which + " reading of the coils, wire " + Model.print(wire.orElse(0.0), Dimension.RESISTANCE) + ", "
                + Model.print(model.limit("coil-temperature").low(), Dimension.TEMPERATURE) + " to "
                + Model.print(model.limit("coil-temperature").high(), Dimension.TEMPERATURE));
    }

    /** The greatest reading, and where it rests on nominal impedances the least one as well. */
    private Shown<Double> expected(Shown<MeterReading> window, CoilNet net) {
        List<Window> windows = nets.windows(net);
        return window.then(one -> windows.isEmpty() ? Shown.of(shown(one.high())) : new Shown.Assumed<>(shown(one.low()), shown(one.high()),
                Windows.unweighed(windows), () -> "DC resistance taken from the nominal impedance"));
    }

    /** An open net reads no number; the largest one a meter shows stands for it. */
    private double shown(double ohms) {
        return Double.isInfinite(ohms) ? model.value("open-circuit") : ohms;
    }

    private void note(String path, Shown<MeterReading> window) {
        if (window instanceof Shown.Given<MeterReading> given && !Double.isInfinite(given.value().high())) {
            model.numbers.put(path + ".reads-least", given.value().low(), Dimension.RESISTANCE, () -> "DC resistance of the net and its wires, coldest");
            model.numbers.put(path + ".reads-most", given.value().high(), Dimension.RESISTANCE, () -> "DC resistance of the net and its wires, warmest");
        }
    }
}
