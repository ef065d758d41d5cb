package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.graph.Link;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SpeakerReturns;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about the returns of speakers: what the cables of an output meet, and how the vehicle's own speaker wiring is made. */
final class SpeakerReturnFacts {
    private final Model model;
    private final Outputs outputs;

    SpeakerReturnFacts(Model model, Outputs outputs) {
        this.model = model;
        this.outputs = outputs;
    }

    void collect(Consumer<Fact> facts) {
        for (Output output : outputs.all()) {
            facts.accept(returns(output));
        }
        TreeMap<String, Vehicle.Connector> kept = new TreeMap<>();
        for (Plan.PinUse pin : model.job.plan().pins().values()) {
            Vehicle.Connector connector = model.job.vehicle().connectors().get(pin.id().substring(0, Math.max(0, pin.id().indexOf('.'))));
            if (connector != null && pin.function().orElse("speaker").equals("speaker") && drives(pin.connectedTo().orElse(""))) {
                kept.put(connector.id(), connector);
            }
        }
        kept.values().forEach(connector -> facts.accept(new SpeakerReturns(connector.path(), connector.at(),
                connector.speakerReturns().map("own"::equals), connector.speakerReturns().map(word -> word.equals("own") ? "each has its own" : "several share one"))));
    }

    /** Whether a pin that is joined to it carries sound to a speaker, and not to an input. */
    private boolean drives(String terminal) {
        Item item = model.job.itemOf(terminal);
        return item instanceof Item.Speaker || item instanceof Item.PassiveNetwork || isAmplifierOutput(terminal);
    }

    private boolean isAmplifierOutput(String terminal) {
        return model.job.itemOf(terminal) instanceof Item.Amplifier && terminal.matches(".*\\.(ch|bridged)-.*");
    }

    private SpeakerReturns returns(Output output) {
        TreeSet<String> met = new TreeSet<>();
        TreeSet<String> open = new TreeSet<>();
        for (String terminal : reached(output.wiring().id())) {
            if (WiringGraph.isOpen(terminal)) {
                open.add(terminal);
            } else if (!terminal.equals(output.wiring().id()) && !leadsOn(terminal)) {
                met.add(terminal);
            }
        }
        Shown<Boolean> apart = !met.isEmpty() ? Shown.of(false) : open.isEmpty() ? Shown.of(true)
                : Shown.missing(open.stream().map(end -> new Need("runs", "where the speaker cable " + end.substring(1) + " ends", output.wiring().at())).toList());
        return new SpeakerReturns(output.wiring().path(), output.wiring().at(), apart, Shown.of(met.isEmpty() ? "meets no other" : "meets " + String.join(", ", met)));
    }

    /** What only takes what an output gives, or joins conductor to conductor. */
    private boolean leadsOn(String terminal) {
        Item item = model.job.itemOf(terminal);
        return item instanceof Item.Speaker || item instanceof Item.PassiveNetwork || item instanceof Item.Joint;
    }

    /** Terminals that the cables of an output join to it, on from speaker to speaker and no farther. */
    private Set<String> reached(String start) {
        Set<String> reached = new TreeSet<>(List.of(start));
        Deque<String> left = new ArrayDeque<>(reached);
        while (!left.isEmpty()) {
            String here = left.poll();
            for (Link link : model.wiring.at(here)) {
                String next = link.other(here);
                if (link.kind() == Link.Kind.RUN && reached.add(next) && leadsOn(next)) {
                    left.add(next);
                }
            }
        }
        return reached;
    }
}
