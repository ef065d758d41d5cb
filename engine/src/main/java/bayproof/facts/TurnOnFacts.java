package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.TurnOn;
import bayproof.vocabulary.TurnOnOutput;
import bayproof.vocabulary.VitalItem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about what wakes each amplifier, processor and interface, and how much its source has to give. */
final class TurnOnFacts {
    private static final String OUT = ".out";

    private final Model model;
    private final Sides sides;

    TurnOnFacts(Model model) {
        this.model = model;
        this.sides = new Sides(model);
    }

    void collect(Consumer<Fact> facts) {
        for (Item item : model.job.items().values()) {
            if (item instanceof Item.Amplifier || item instanceof Item.Processor) {
                Shown<String> source = origin(item.id() + ".turn-on", item, new HashSet<>());
                facts.accept(new TurnOn(item.path(), item.at(), source,
                        source.isGiven() && !model.limit("turn-on-grave").words().contains(source.orElse(""))));
            }
            if (item instanceof Item.Interface module) {
                output(item.path(), item.at(), net(item.id() + ".turn-on"), module.turnOnLimitAmperes(), facts);
                facts.accept(vital(item));
            } else if (item instanceof Item.Processor processor) {
                output(item.path(), item.at(), net(item.id() + ".turn-on-out"), processor.turnOnLimitAmperes(), facts);
                facts.accept(vital(item));
            }
        }
        for (Vehicle.Output output : model.job.vehicle().outputs().values()) {
            Set<String> reached = net(output.id() + OUT);
            for (Plan.PinUse pin : model.job.plan().pins().values()) {
                if (pin.connectedTo().isGiven() && outputOf(pin).orElse("").equals(output.id())) {
                    reached.addAll(net(pin.connectedTo().orElse("")));
                }
            }
            output(output.path(), output.at(), reached, output.limitAmperes(), facts);
        }
    }

    /** Every terminal that runs join to this one, itself included. */
    private Set<String> net(String terminal) {
        Set<String> seen = new LinkedHashSet<>(List.of(terminal));
        ArrayDeque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            String here = open.remove();
            for (Link link : model.wiring.at(here)) {
                if (link.kind() == Link.Kind.RUN && seen.add(link.other(here))) {
                    open.add(link.other(here));
                }
            }
        }
        return seen;
    }

    // where a turn-on comes from

    /** What the way back from an input ends at; several sources on one input are as good as the worst of them. */
    private Shown<String> origin(String input, Item item, Set<String> walked) {
        List<Shown<String>> sources = new ArrayList<>();
        Set<String> net = net(input);
        if (walked.add(input)) {
            for (String terminal : net) {
                if (!terminal.equals(input)) {
                    driver(terminal, walked, sources);
                }
            }
            model.job.plan().pins().values().stream().filter(pin -> net.contains(pin.connectedTo().orElse("")))
                    .forEach(pin -> sources.add(pinSource(pin)));
        }
        boolean bus = model.job.plan().buses().orElse(Map.of()).values().stream().anyMatch(use -> use.by().orElse("").equals(item.id()));
        if (sources.isEmpty() && item instanceof Item.Interface && bus) {
            return Shown.of("interface");
        }
        List<String> fit = model.limit("turn-on-sources").words();
        for (Shown<String> source : sources) {
            if (source.isGiven() && !fit.contains(source.orElse(""))) {
                return source;
            }
        }
        return sources.stream().filter(source -> !source.isGiven()).findFirst().orElse(sources.isEmpty()
                ? Shown.missing(new Need(item instanceof Item.Interface ? "pins" : "runs", "what turns " + item.id() + " on", item.at()))
                : sources.get(0));
    }

    private void driver(String terminal, Set<String> walked, List<Shown<String>> sources) {
        Item item = model.job.itemOf(terminal);
        String name = terminal.substring(terminal.indexOf('.') + 1);
        if (item == null) {
            Vehicle.Output output = terminal.endsWith(OUT) ? model.job.vehicle().outputs().get(terminal.substring(0, terminal.indexOf('.'))) : null;
            if (output != null) {
                sources.add(source(output));
            }
        } else if (item instanceof Item.Interface && name.equals("turn-on")) {
            sources.add(origin(item.id() + ".wake", item, walked));
        } else if (item instanceof Item.Processor && name.equals("turn-on-out")) {
            sources.add(origin(item.id() + ".turn-on", item, walked));
        } else if (item instanceof Item.Fuse || item instanceof Item.FuseBlock || name.equals("positive") || name.equals("supply")) {
            sources.add(Shown.of("constant-supply"));
        }
    }

    private Shown<String> source(Vehicle.Output output) {
        return output.kind().with(output.from(), (kind, from) -> kind.equals("turn-on") ? from : kind + " output");
    }

    private Shown<String> pinSource(Plan.PinUse pin) {
        Shown<String> output = outputOf(pin);
        if (output.isGiven()) {
            Vehicle.Output known = model.job.vehicle().outputs().get(output.orElse(""));
            return known == null ? Shown.missing(new Need("outputs." + output.orElse("") + ".from", "what drives this output", pin.at())) : source(known);
        }
        return pin.function().then(function -> function.equals("turn-on") ? output
                : Shown.of(function.equals("switched-supply") ? "ignition" : function));
    }

    /** The output of the vehicle sheet that a pin carries. */
    private Shown<String> outputOf(Plan.PinUse pin) {
        Vehicle.Cavity cavity = model.job.vehicle().cavity(pin);
        return cavity != null ? cavity.output()
                : Shown.missing(new Need("connectors." + pin.id().replace(".", ".cavities.") + ".output", "output that comes out of this cavity", pin.at()));
    }

    // how much hangs on one output

    private void output(String path, At at, Set<String> reached, Shown<Double> limit, Consumer<Fact> facts) {
        Shown<Double> sum = Shown.of(0.0);
        List<String> terms = new ArrayList<>();
        for (String terminal : reached) {
            Item item = model.job.itemOf(terminal);
            String name = terminal.substring(terminal.indexOf('.') + 1);
            boolean input = item instanceof Item.Interface ? name.equals("wake") : item instanceof Item.Powered && name.equals("turn-on");
            if (item instanceof Item.Relay relay && (name.equals("86") || name.equals("85"))) {
                sum = sum.with(relay.coilAmperes(), Double::sum);
                terms.add(relay.id());
            } else if (input) {
                sum = sum.with(((Item.Powered) item).upkeep().turnOnAmperes(), Double::sum);
                terms.add(item.id());
            }
        }
        if (!terms.isEmpty()) {
            Shown<Double> draw = sum.then(total -> Shown.of(total, () -> "turn-on draw of " + String.join(" + ", terms) + " = "
                    + Model.print(total, Dimension.CURRENT)));
            if (draw instanceof Shown.Given<Double> given) {
                model.numbers.put(path + ".turn-on-total", given.value(), Dimension.CURRENT, given.calculation());
            }
            facts.accept(new TurnOnOutput(path, at, draw, limit));
        }
    }

    // what the vehicle may switch off

    private VitalItem vital(Item item) {
        Set<String> reached = net(item.id() + ".supply");
        for (String name : List.of(".memory", ".ignition", ".wake", ".turn-on")) {
            // The interface's own turn-on is an output.
            if (item.hasTerminal(name.substring(1)) && !(item instanceof Item.Interface && name.equals(".turn-on"))) {
                reached.addAll(net(item.id() + name));
            }
        }
        Set<String> outputs = new LinkedHashSet<>();
        for (String terminal : reached) {
            String id = terminal.indexOf('.') < 0 ? terminal : terminal.substring(0, terminal.indexOf('.'));
            if (terminal.endsWith(OUT) && model.job.itemOf(terminal) == null && model.job.vehicle().outputs().containsKey(id)) {
                outputs.add(id);
            }
        }
        model.job.plan().pins().values().stream().filter(pin -> reached.contains(pin.connectedTo().orElse("")))
                .forEach(pin -> outputs.add(outputOf(pin).orElse("")));
        outputs.retainAll(model.job.vehicle().outputs().keySet());
        Shown<Boolean> kept = Shown.of(true);
        for (String id : outputs) {
            kept = Kleene.and(kept, model.job.vehicle().outputs().get(id).shed().map(shed -> shed.equals("no")));
        }
        boolean fed = sides.hangsOnAny(item.id() + ".supply") || reached.stream().anyMatch(terminal -> terminal.endsWith(OUT)
                && outputs.contains(terminal.substring(0, terminal.indexOf('.'))) && net(item.id() + ".supply").contains(terminal));
        if (!fed) {
            kept = Kleene.and(kept, Shown.missing(new Need("runs", "the run that feeds " + item.id() + ".supply", item.at())));
        }
        return new VitalItem(item.path(), item.at(), kept, Shown.of(outputs.isEmpty() ? "" : String.join(", ", outputs)));
    }
}
