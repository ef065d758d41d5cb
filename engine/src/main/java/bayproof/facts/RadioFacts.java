package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.units.Dimension;
import bayproof.units.Quantity;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.JoinedPin;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.RadioLink;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about the joint between the job and the factory radio: its pins, and the interface made for it. */
final class RadioFacts {
    /** Stages between the interface and an amplifier. */
    private static final int MOST_STAGES = 5;

    private final Model model;
    private final CalibrationFacts calibration;

    RadioFacts(Model model) {
        this.model = model;
        this.calibration = new CalibrationFacts(model);
    }

    void collect(Consumer<Fact> facts) {
        model.job.plan().pins().values().forEach(pin -> facts.accept(pin(pin)));
        for (Item.Interface module : model.job.itemsOf(Item.Interface.class)) {
            facts.accept(link(module));
        }
        for (Item.Amplifier amplifier : model.job.itemsOf(Item.Amplifier.class)) {
            unfedAmplifier(amplifier, facts);
        }
    }

    // pins

    private JoinedPin pin(Plan.PinUse pin) {
        String connectorId = pin.id().substring(0, pin.id().indexOf('.'));
        Vehicle.Connector connector = model.job.vehicle().connectors().get(connectorId);
        Vehicle.Cavity cavity = connector == null ? null : connector.cavities().get(pin.id().substring(pin.id().indexOf('.') + 1));
        Shown<String> family = connector == null
                ? missing("connectors." + connectorId + ".family", "family of the connector " + connectorId, pin.at()) : connector.family();
        String harness = harnessFor(family.orElse(null));
        Plan.Identified identified = pin.identified();
        Shown<Attestation> proved = identified.who().with(identified.when(), (who, when) -> new String[] {who, when})
                .with(identified.by(), (who, by) -> new Attestation(who[0], who[1], by))
                .with(calibration.reliable(identified.by(), identified.when(), pin.path() + ".identified.when", pin.at()), (said, holds) -> said);
        // A pin that nobody joined to anything yet is still taken as one that will be joined.
        Shown<Boolean> target = pin.connectedTo().map(terminal -> true);
        Shown<String> method = pin.method().with(target, (how, yes) -> how);
        return new JoinedPin(pin.path(), pin.at(), method, spareable(pin, family, harness), harness == null ? "tap-crimp" : harness,
                proved, identified.by(), expected(pin), reading(pin), agrees(pin, cavity),
                Ladders.knob(() -> List.of(harness == null ? "tap-crimp" : "plug-in-harness"), "pins", pin.id(), "method"));
    }

    /** A lead of the shop's parts book or of this job that has the plug; null where there is none. */
    private String harnessFor(String family) {
        return family == null ? null : Stream.concat(model.job.book().entrySet().stream().map(part -> Map.entry(part.getKey(), part.getValue())),
                        model.job.itemsOf(Item.Harness.class).stream().map(lead -> Map.entry(lead.id(), lead)))
                .filter(lead -> lead.getValue().connectors().orElse(List.of()).contains(family))
                .map(Map.Entry::getKey).findFirst().orElse(null);
    }

    /** Whether the wire can stay whole: a plug-in harness fits the connector, or the function can be tapped. */
    private Shown<Boolean> spareable(Plan.PinUse pin, Shown<String> family, String harness) {
        if (harness != null) {
            return Shown.of(true);
        }
        Shown<Boolean> tappable = pin.function().map(function -> model.limit("functions-a-tap-serves").words().contains(function));
        if (Kleene.is(tappable, true)) {
            return tappable;
        }
        return family.with(tappable, (known, tap) -> tap);
    }

    /** Name of the limit that the reading must fit: there is one for each function and the state it is read in. */
    private Shown<String> expected(Plan.PinUse pin) {
        return pin.function().with(pin.identified().state(), (function, state) -> "pin-" + function + "-" + state).then(name ->
                model.job.limits().has(name) ? Shown.of(name)
                        : Shown.missing(new Need(pin.path() + ".identified.state", "a reading in a state that proves the function: "
                        + statesFor(pin.function().orElse("")), pin.identified().state().atOr(pin.at()))));
    }

    private String statesFor(String function) {
        String prefix = "pin-" + function + "-";
        return String.join(" or ", model.job.limits().all().stream().filter(limit -> limit.name().startsWith(prefix))
                .map(limit -> limit.name().substring(prefix.length())).toList());
    }

    private Shown<Double> reading(Plan.PinUse pin) {
        return pin.identified().reading().with(expected(pin), (reading, limit) -> new Object[] {reading, limit}).then(pair -> {
            Quantity reading = (Quantity) pair[0];
            Dimension wanted = Dimension.ofSymbol(model.limit((String) pair[1]).unit());
            return reading.dimension() == wanted ? Shown.of(reading.si())
                    : Shown.missing(new Need(pin.path() + ".identified.reading", "a reading in " + wanted.symbol(),
                    pin.identified().reading().atOr(pin.at())));
        });
    }

    private Shown<Boolean> agrees(Plan.PinUse pin, Vehicle.Cavity cavity) {
        if (cavity == null) {
            return missing("connectors." + pin.id(), "the cavity in the vehicle sheet", pin.at());
        }
        return pin.function().with(cavity.function(), String::equals).with(pin.color().with(cavity.color(), String::equals),
                (function, color) -> function && color);
    }

    // the interface

    private RadioLink link(Item.Interface module) {
        Vehicle.Radio radio = model.job.vehicle().radio();
        Shown<List<String>> families = familiesOf(module);
        Shown<String> text = radio.variant().with(radio.factoryAmplifier(), (variant, amplifier) ->
                "radio " + variant + ", factory amplifier " + amplifier).with(families, (head, names) -> head + ", connectors " + String.join(", ", names));
        if (module.madeFor().isEmpty()) {
            return new RadioLink(module.path(), module.at(), missing(module.path() + ".made-for",
                    "the radios and connectors that " + module.id() + " is listed for", module.at()), text);
        }
        Shown<Boolean> listed = Shown.of(false);
        for (Item.MadeFor row : module.madeFor().values()) {
            listed = Kleene.or(listed, fits(row, radio, families));
        }
        return new RadioLink(module.path(), module.at(), listed, text);
    }

    /** One line of the list against the vehicle: false as soon as one fact is known not to fit. */
    private static Shown<Boolean> fits(Item.MadeFor row, Vehicle.Radio radio, Shown<List<String>> families) {
        return Kleene.and(Kleene.and(row.radio().with(radio.variant(), String::equals),
                row.factoryAmplifier().with(radio.factoryAmplifier(), String::equals)), row.connectors().with(families, List::containsAll));
    }

    /** Families of the connectors whose pins the interface joins. */
    private Shown<List<String>> familiesOf(Item.Interface module) {
        Set<String> connectors = new LinkedHashSet<>();
        model.job.plan().pins().values().stream().filter(pin -> pin.connectedTo().orElse("").startsWith(module.id() + "."))
                .forEach(pin -> connectors.add(pin.id().substring(0, pin.id().indexOf('.'))));
        if (connectors.isEmpty()) {
            return missing("pins", "the radio pins that " + module.id() + " is joined to", module.at());
        }
        Shown<List<String>> families = Shown.of(List.of());
        for (String id : connectors) {
            Vehicle.Connector connector = model.job.vehicle().connectors().get(id);
            Shown<String> family = connector == null
                    ? missing("connectors." + id + ".family", "family of the connector " + id, module.at()) : connector.family();
            families = families.with(family, (all, one) -> {
                List<String> more = new ArrayList<>(all);
                more.add(one);
                return more;
            });
        }
        return families;
    }

    /** An amplifier that no interface reaches with signal and turn-on: what fits the radio is not known then. */
    private void unfedAmplifier(Item.Amplifier amplifier, Consumer<Fact> facts) {
        List<Need> needs = new ArrayList<>();
        if (!reached(amplifier.id() + ".signal-", 0)) {
            needs.add(new Need("runs", "the run that brings a signal to " + amplifier.id(), amplifier.at()));
        }
        if (!reached(amplifier.id() + ".turn-on", 0)) {
            needs.add(new Need("runs", "the run that turns " + amplifier.id() + " on", amplifier.at()));
        }
        if (!needs.isEmpty()) {
            Shown<Boolean> missing = Shown.missing(needs);
            facts.accept(new RadioLink(amplifier.path(), amplifier.at(), missing, missing.map(x -> "")));
        }
    }

    /** Whether a run from an interface, or through processors from one, ends at a terminal of that beginning. */
    private boolean reached(String terminal, int depth) {
        for (Link link : model.wiring.links()) {
            if (link.kind() == Link.Kind.RUN && (comes(link.from(), link.to(), terminal, depth) || comes(link.to(), link.from(), terminal, depth))) {
                return true;
            }
        }
        return false;
    }

    private boolean comes(String from, String to, String terminal, int depth) {
        if (!to.startsWith(terminal)) {
            return false;
        }
        Item item = model.job.itemOf(from);
        return item instanceof Item.Interface || item instanceof Item.Processor && depth < MOST_STAGES
                && reached(item.id() + (terminal.endsWith("turn-on") ? ".turn-on" : ".signal-"), depth + 1);
    }

    private static <T> Shown<T> missing(String path, String ask, At at) {
        return Shown.missing(new Need(path, ask, at));
    }
}
