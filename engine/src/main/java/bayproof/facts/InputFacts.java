package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.LineSignal;
import bayproof.read.Plan;
import bayproof.read.References;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FedInput;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SignalDevice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/** Facts about signal terminals: what feeds an input, and whether a device has one that was forgotten. */
final class InputFacts {
    private static final String LINE = "line level";
    private static final String SPEAKER = "speaker level";
    private static final String SIGNAL = "signal-";

    /** What feeds one input. */
    private static final class Feeds {
        private final At at;
        private final TreeSet<String> kinds = new TreeSet<>();
        private final TreeSet<String> names = new TreeSet<>();
        private final List<Need> unknown = new ArrayList<>();

        private Feeds(At at) {
            this.at = at;
        }

        private FedInput fact(String subject) {
            // A single unknown source is of one kind, whatever it is.
            Shown<Boolean> one = kinds.size() > 1 ? Shown.of(false) : kinds.size() + unknown.size() < 2 ? Shown.of(true) : Shown.missing(unknown);
            return new FedInput(subject, at, one, Shown.of(String.join(", ", names)));
        }
    }

    private final Model model;

    InputFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        Map<String, Feeds> fed = new TreeMap<>();
        for (Link link : model.wiring.links()) {
            if (link.kind() == Link.Kind.RUN) {
                run(fed, link, link.from(), link.to());
                run(fed, link, link.to(), link.from());
            }
        }
        for (Plan.PinUse pin : model.job.plan().pins().values()) {
            String terminal = pin.connectedTo().orElse("");
            if (isInput(terminal) && pin.function().orElse("speaker").equals("speaker")) {
                add(fed, terminal, pin.at(), pin.id(), pin.function().isGiven() ? SPEAKER : null, pin.function().needs());
            }
        }
        fed.forEach((terminal, feeds) -> facts.accept(feeds.fact(
                model.job.itemOf(terminal).path() + terminal.substring(terminal.indexOf('.')))));
        Map<String, TreeSet<Integer>> joined = joined();
        for (Item item : model.job.items().values()) {
            LineSignal signal = LineSignal.of(item);
            if (signal != null && !item.path().startsWith("supply.")) {
                device(item, signal, joined.getOrDefault(item.id(), new TreeSet<>()), facts);
            }
        }
    }

    // terminals in use and free ones

    /** An accessory that no signal enters or leaves is none; an interface or a processor always is one. */
    private void device(Item item, LineSignal signal, TreeSet<Integer> joined, Consumer<Fact> facts) {
        if (item instanceof Item.Accessory && joined.isEmpty() && !signal.terminals().isGiven()) {
            return;
        }
        Shown<List<String>> open = signal.terminals().then(count -> {
            List<String> loose = IntStream.rangeClosed(1, count).filter(one -> !joined.contains(one)).mapToObj(one -> SIGNAL + one).toList();
            List<String> beyond = joined.stream().filter(one -> one > count).map(one -> SIGNAL + one).toList();
            return loose.isEmpty() && !signal.free().isGiven() ? Shown.of(beyond) : signal.free().map(free -> {
                List<String> wrong = new ArrayList<>(beyond);
                loose.stream().filter(terminal -> !free.contains(terminal)).forEach(wrong::add);
                free.stream().filter(terminal -> !loose.contains(terminal)).forEach(wrong::add);
                return wrong;
            });
        });
        facts.accept(new SignalDevice(item.path(), item.at(), open.map(List::isEmpty),
                open.map(wrong -> wrong.isEmpty() ? "each joined or free" : "neither joined nor free, or both: " + String.join(", ", wrong))));
    }

    /** By item, the numbers of its signal terminals that a run ends at. */
    private Map<String, TreeSet<Integer>> joined() {
        Map<String, TreeSet<Integer>> joined = new HashMap<>();
        for (Link link : model.wiring.links()) {
            for (String terminal : List.of(link.from(), link.to())) {
                int at = terminal.indexOf("." + SIGNAL);
                String digits = at < 0 ? "" : terminal.substring(at + 1 + SIGNAL.length());
                if (digits.matches("[1-9][0-9]?")) {
                    joined.computeIfAbsent(terminal.substring(0, at), any -> new TreeSet<>()).add(Integer.parseInt(digits));
                }
            }
        }
        return joined;
    }

    // what feeds an input

    private void run(Map<String, Feeds> fed, Link link, String terminal, String source) {
        if (isInput(terminal)) {
            boolean open = WiringGraph.isOpen(source);
            add(fed, terminal, link.run().at(), open ? link.id() : source, open ? null : kind(source),
                    List.of(new Need(link.run().path() + ".from", "the source of the signal in " + link.id(), link.run().at())));
        }
    }

    private static void add(Map<String, Feeds> fed, String terminal, At at, String name, String kind, List<Need> needs) {
        Feeds feeds = fed.computeIfAbsent(terminal, any -> new Feeds(at));
        if (kind == null) {
            feeds.unknown.addAll(needs);
            feeds.names.add(name + " unknown");
        } else {
            feeds.kinds.add(kind);
            feeds.names.add(name + " " + kind);
        }
    }

    private boolean isInput(String terminal) {
        Item item = model.job.itemOf(terminal);
        return (item instanceof Item.Amplifier || item instanceof Item.Processor) && terminal.contains(".signal-");
    }

    /** A speaker output of an amplifier, of the radio or of a factory amplifier drives speakers; everything else gives line level. */
    private String kind(String source) {
        boolean speaker = model.job.itemOf(source) instanceof Item.Amplifier && !source.contains(".signal-")
                || source.endsWith(References.OUTPUT) && model.job.itemOf(source) == null;
        return speaker ? SPEAKER : LINE;
    }
}
