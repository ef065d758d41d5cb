package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.Role;
import bayproof.read.CoilNet;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.WiredNet;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about the leads of a net of voice coils: whether they join just the coils that the net has. */
final class NetFacts {
    private final Model model;

    NetFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        Map<String, Set<String>> joined = new TreeMap<>();
        model.job.plan().speakerWiring().keySet().forEach(output -> joined.put(output, coilsAt(output)));
        for (Plan.Wiring wiring : model.job.plan().speakerWiring().values()) {
            if (wiring.net().isGiven()) {
                facts.accept(net(wiring, joined));
            }
        }
    }

    private WiredNet net(Plan.Wiring wiring, Map<String, Set<String>> joined) {
        List<String> coils = CoilNet.parse(wiring.net().orElse("")).coils();
        Set<String> here = joined.get(wiring.id());
        List<String> wrong = new ArrayList<>();
        List<Need> open = new ArrayList<>();
        for (String coil : coils) {
            if (here.contains(coil)) {
                continue;
            }
            String other = joined.entrySet().stream().filter(one -> one.getValue().contains(coil)).map(Map.Entry::getKey).findFirst().orElse(null);
            if (other == null) {
                open.add(new Need("runs", "the run that ends at " + coil, wiring.at()));
            } else {
                wrong.add(coil + " hangs on " + other);
            }
        }
        here.stream().filter(coil -> !coils.contains(coil)).forEach(coil -> wrong.add(coil + " hangs on it, too"));
        Shown<Boolean> asWritten = !wrong.isEmpty() ? Shown.of(false) : open.isEmpty() ? Shown.of(true) : Shown.missing(open);
        return new WiredNet(wiring.path(), wiring.at(), asWritten, Shown.of(wrong.isEmpty() ? "its own coils" : String.join(", ", wrong)));
    }

    /** Coils that runs, or pins of a factory connector, join to an output, on from coil to coil. */
    private Set<String> coilsAt(String output) {
        Set<String> reached = new TreeSet<>(List.of(output));
        model.job.plan().pins().values().stream().filter(pin -> model.carries(pin, output)).forEach(pin -> reached.add(pin.connectedTo().orElse("")));
        Deque<String> left = new ArrayDeque<>(reached);
        Set<String> coils = new TreeSet<>();
        while (!left.isEmpty()) {
            String here = left.poll();
            if (isCoil(here)) {
                coils.add(here);
            }
            for (Link link : model.wiring.at(here)) {
                String next = link.other(here);
                if (link.kind() == Link.Kind.RUN && model.wiring.role(link.run()) == Role.SPEAKER && (isCoil(next) || model.wiring.isJoint(next))
                        && reached.add(next)) {
                    left.add(next);
                }
            }
        }
        return coils;
    }

    /** A complete passive network has one input and its speakers behind it. */
    private boolean isCoil(String terminal) {
        Item item = model.job.itemOf(terminal);
        return item instanceof Item.Speaker || item instanceof Item.LoadResistor || item instanceof Item.PassiveNetwork && terminal.endsWith(".input");
    }
}
