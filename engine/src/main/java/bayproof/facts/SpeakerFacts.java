package bayproof.facts;

import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.units.Dimension;
import bayproof.vocabulary.AmplifierChannels;
import bayproof.vocabulary.BoxedSpeaker;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.OutputLoad;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
        OutputFacts cables = new OutputFacts(model, amplifiers, inUse, this);
        cables.collect(facts);
        new CrossoverFacts(model, inUse).collect(facts);
        new BoxFacts(model, amplifiers.nets(), inUse, cables).collect(facts);
        new DriverFacts(model, amplifiers, inUse).collect(facts);
        new BandFacts(model, amplifiers.nets(), inUse).collect(facts);
        SignalFacts signals = new SignalFacts(model, inUse);
        signals.collect(facts);
        new ChannelMapFacts(model, inUse, signals).collect(facts);
        new SpeakerReturnFacts(model, inUse).collect(facts);
        new InputFacts(model).collect(facts);
        new NetFacts(model).collect(facts);
        Set<String> wired = new LinkedHashSet<>();
        for (Item.Speaker speaker : model.job.itemsOf(Item.Speaker.class)) {
            facts.accept(new BoxedSpeaker(speaker.path(), speaker.at(), speaker.data().plays(), speaker.data().plays().map("subwoofer"::equals), enclosed(speaker)));
        }
        for (Item.Amplifier amplifier : model.job.itemsOf(Item.Amplifier.class)) {
            List<Plan.Wiring> outputs = amplifiers.outputsOf(amplifier);
            facts.accept(channels(amplifier, outputs));
            if (outputs.isEmpty()) {
                facts.accept(unwired(amplifier, "what hangs on the outputs of " + amplifier.id()));
            }
            for (Plan.Wiring wiring : outputs) {
                wiring.net().map(text -> wired.addAll(CoilNet.parse(text).coils()));
                facts.accept(load(amplifier, wiring));
            }
        }
        for (Plan.Wiring wiring : model.job.plan().speakerWiring().values()) {
            Vehicle.Output output = model.factoryOutput(wiring);
            if (output != null) {
                wiring.net().map(text -> wired.addAll(CoilNet.parse(text).coils()));
                Shown<Double> load = amplifiers.loadOhms(wiring);
                facts.accept(new OutputLoad(wiring.path(), wiring.at(), false, load, cabled(wiring), output.audio().minimumLoadOhms(), rewire(wiring)));
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

    /** Where the job has no enclosure at all, none can be named: then the enclosure itself is asked for. */
    private Shown<Boolean> enclosed(Item.Speaker speaker) {
        if (!speaker.enclosure().isGiven() && model.job.itemsOf(Item.Enclosure.class).isEmpty()) {
            return Shown.missing(new Need("items", "the item of kind enclosure that the subwoofer is built into", speaker.at()));
        }
        return speaker.enclosure().map(box -> model.job.items().get(box) instanceof Item.Enclosure);
    }

    /** A channel in use is not free, and one that is free is not in use. */
    private static AmplifierChannels channels(Item.Amplifier amplifier, List<Plan.Wiring> outputs) {
        Set<Integer> used = new TreeSet<>();
        for (Plan.Wiring wiring : outputs) {
            int number = number(wiring.id());
            if (Amplifiers.isBridged(wiring)) {
                used.add(2 * number - 1);
                used.add(2 * number);
            } else {
                used.add(number);
            }
        }
        Shown<List<String>> open = amplifier.channels().then(channels -> used.size() == channels && !amplifier.freeChannels().isGiven()
                ? Shown.of(List.of()) : amplifier.freeChannels().map(free -> {
                    List<String> wrong = new ArrayList<>(free.stream().filter(id -> number(id) < 1 || number(id) > channels).toList());
                    for (int channel = 1; channel <= channels; channel++) {
                        if (used.contains(channel) == free.contains("ch-" + channel)) {
                            wrong.add("ch-" + channel);
                        }
                    }
                    return wrong;
                }));
        return new AmplifierChannels(amplifier.path(), amplifier.at(), open.map(List::isEmpty), open.map(ids -> String.join(", ", ids)));
    }

    private static int number(String channel) {
        String digits = channel.replaceAll(".*-", "");
        return digits.matches("[0-9]{1,2}") ? Integer.parseInt(digits) : 0;
    }

    private OutputLoad unwired(Item item, String ask) {
        Shown<Double> missing = Shown.missing(new Need("speaker-wiring", ask, item.at()));
        return new OutputLoad(item.path(), item.at(), false, missing, missing.map(x -> true), missing, null);
    }

    private OutputLoad load(Item.Amplifier amplifier, Plan.Wiring wiring) {
        boolean bridged = Amplifiers.isBridged(wiring);
        Shown<Double> load = amplifiers.loadOhms(wiring);
        if (load instanceof Shown.Given<Double> given) {
            model.numbers.put(wiring.path() + ".load", given.value(), Dimension.RESISTANCE, given.calculation());
        }
        Shown<Boolean> reached = Kleene.and(cabled(wiring), channelExists(amplifier, wiring, bridged));
        return new OutputLoad(wiring.path(), wiring.at(), bridged, load, reached,
                bridged ? amplifier.minimumLoadBridgedOhms() : amplifier.minimumLoadOhms(), rewire(wiring));
    }

    /** A speaker of the net that no run reaches from this output is a net that does not exist yet. */
    private Shown<Boolean> cabled(Plan.Wiring wiring) {
        String text = wiring.net().orElse(null);
        if (text == null) {
            return Shown.of(true);
        }
        Set<String> reached = model.wiring.farEnds(wiring.id());
        model.job.plan().pins().values().stream().filter(pin -> model.carries(pin, wiring.id()))
                .forEach(pin -> reached.add(pin.connectedTo().orElse("")));
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
        return amplifier.channels().then(channels -> {
            int number = number(wiring.id());
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
        return amplifiers.loadOhms(new Plan.Wiring(wiring.id(), wiring.path(), wiring.at(), Shown.of(net), wiring.readOhms(), wiring.toBodyOhms(), wiring.directVolts(), wiring.polarity(), wiring.guard())).orElse(0.0);
    }
}
