package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.OutputLoad;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about the loads on amplifier outputs; an amplifier or a voice coil that nobody wired is a subject too. */
final class SpeakerFacts {
    private final Model model;
    private final Amplifiers amplifiers;

    SpeakerFacts(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
    }

    void collect(Consumer<Fact> facts) {
        Outputs inUse = new Outputs(model, amplifiers);
        new OutputFacts(model, amplifiers, inUse, this).collect(facts);
        new DriverFacts(model, amplifiers, inUse).collect(facts);
        new SignalFacts(model, inUse).collect(facts);
        Set<String> wired = new LinkedHashSet<>();
        for (Item.Amplifier amplifier : model.job.itemsOf(Item.Amplifier.class)) {
            List<Plan.Wiring> outputs = amplifiers.outputsOf(amplifier);
            if (outputs.isEmpty()) {
                facts.accept(unwired(amplifier, "what hangs on the outputs of " + amplifier.id()));
            }
            for (Plan.Wiring wiring : outputs) {
                wiring.net().map(text -> wired.addAll(CoilNet.parse(text).coils()));
                facts.accept(load(amplifier, wiring));
            }
        }
        Set<String> behind = new LinkedHashSet<>();
        model.job.itemsOf(Item.PassiveNetwork.class).stream().filter(network -> wired.contains(network.id() + ".input"))
                .forEach(network -> behind.addAll(network.feeds().orElse(List.of())));
        for (Item.Speaker speaker : model.job.itemsOf(Item.Speaker.class)) {
            if (behind.contains(speaker.id())) {
                continue;
            }
            List<String> loose = speaker.coils().keySet().stream().filter(coil -> !wired.contains(speaker.id() + "." + coil)).toList();
            if (!loose.isEmpty() || speaker.coils().isEmpty()) {
                facts.accept(unwired(speaker, speaker.coils().isEmpty() ? "the voice coils of " + speaker.id()
                        : "what " + speaker.id() + "." + loose.get(0) + " hangs on"));
            }
        }
    }

    private OutputLoad unwired(Item item, String ask) {
        Shown<Double> missing = Shown.missing(new Need("speaker-wiring", ask, item.at()));
        return new OutputLoad(item.path(), item.at(), false, missing, missing, null);
    }

    private OutputLoad load(Item.Amplifier amplifier, Plan.Wiring wiring) {
        boolean bridged = Amplifiers.isBridged(wiring);
        Shown<Double> load = amplifiers.loadOhms(wiring);
        if (load instanceof Shown.Given<Double> given) {
            model.numbers.put(wiring.path() + ".load", given.value(), Dimension.RESISTANCE, given.calculation());
        }
        Shown<Double> reached = load.with(cabled(wiring), (ohms, yes) -> ohms)
                .with(channelExists(amplifier, wiring, bridged), (ohms, yes) -> ohms);
        return new OutputLoad(wiring.path(), wiring.at(), bridged, reached,
                bridged ? amplifier.minimumLoadBridgedOhms() : amplifier.minimumLoadOhms(), rewire(wiring));
    }

    /** A speaker of the net that no run reaches from this output is a net that does not exist yet. */
    private Shown<Boolean> cabled(Plan.Wiring wiring) {
        String text = wiring.net().orElse(null);
        if (text == null) {
            return Shown.of(true);
        }
        Set<String> reached = new LinkedHashSet<>();
        for (Link link : model.wiring.at(wiring.id())) {
            reached.add(link.other(wiring.id()));
        }
        Set<String> speakers = new LinkedHashSet<>();
        reached.forEach(terminal -> speakers.add(terminal.substring(0, Math.max(0, terminal.indexOf('.')))));
        for (String coil : CoilNet.parse(text).coils()) {
            String speaker = coil.substring(0, coil.indexOf('.'));
            if (!speakers.contains(speaker)) {
                return Shown.missing(openEnd(wiring, speaker));
            }
        }
        return Shown.of(true);
    }

    private Need openEnd(Plan.Wiring wiring, String speaker) {
        return new Need("runs", "the run from " + wiring.id() + " to " + speaker, wiring.at());
    }

    /** A channel above the amplifier's number, or a pair that it does not have. */
    private Shown<Boolean> channelExists(Item.Amplifier amplifier, Plan.Wiring wiring, boolean bridged) {
        String digits = wiring.id().replaceAll(".*-", "");
        return amplifier.channels().then(channels -> {
            int number = digits.matches("[0-9]{1,2}") ? Integer.parseInt(digits) : 0;
            int most = bridged ? channels / 2 : channels;
            return number >= 1 && number <= most ? Shown.of(true)
                    : Shown.missing(new Need(wiring.path(), amplifier.id() + " has " + channels + " channels: the output in use", wiring.at()));
        });
    }

    /** Other ways to join the same coils, the least load first. */
    Knob rewire(Plan.Wiring wiring) {
        String planned = wiring.net().orElse(null);
        return planned == null ? null : Ladders.knob(() -> netsAbove(wiring, planned), "speaker-wiring", wiring.id(), "net");
    }

    private List<String> netsAbove(Plan.Wiring wiring, String planned) {
        List<String> coils = CoilNet.parse(planned).coils();
        List<String> nets = new ArrayList<>(List.of(String.join(" | ", coils), String.join(" + ", coils)));
        if (coils.size() == 4) {
            nets.add(coils.get(0) + " + " + coils.get(1) + " | " + coils.get(2) + " + " + coils.get(3));
        }
        return nets.stream().distinct().filter(net -> !net.equals(planned))
                .filter(net -> ohms(wiring, net) > ohms(wiring, planned) * (1 + 1e-9))
                .sorted(Comparator.comparingDouble(net -> ohms(wiring, net))).toList();
    }

    private double ohms(Plan.Wiring wiring, String net) {
        return amplifiers.loadOhms(new Plan.Wiring(wiring.id(), wiring.path(), wiring.at(), Shown.of(net), wiring.readOhms(), wiring.toBodyOhms(), wiring.directVolts())).orElse(0.0);
    }
}
