package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.At;
import bayproof.vocabulary.BoxEntry;
import bayproof.vocabulary.DoorSpeaker;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.LeadedConnector;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about plug-in leads, cables into enclosures and speakers in doors. */
final class LeadFacts {
    private final Model model;

    LeadFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        Map<String, List<Plan.PinUse>> byConnector = new TreeMap<>();
        model.job.plan().pins().values().forEach(pin -> byConnector.computeIfAbsent(pin.id().substring(0, pin.id().indexOf('.')), any -> new ArrayList<>()).add(pin));
        byConnector.forEach((connector, pins) -> facts.accept(connector(connector, pins)));
        for (Run run : model.job.plan().runs().values()) {
            Item from = end(run.from());
            Item to = end(run.to());
            // A link between two coils of one speaker stays inside the box.
            if (from != to && (from instanceof Item.Speaker || to instanceof Item.Speaker)) {
                facts.accept(entry(run, from instanceof Item.Speaker speaker ? speaker : (Item.Speaker) to));
            }
        }
        for (Item.Speaker speaker : model.job.itemsOf(Item.Speaker.class)) {
            if (!speaker.enclosure().isGiven()) {
                facts.accept(new DoorSpeaker(speaker.path(), speaker.at(), model.zoneKind(speaker).map(model.limit("zones-on-hinges").words()::contains),
                        speaker.data().waterResistant()));
            }
        }
    }

    private Item end(Shown<String> terminal) {
        return terminal.isGiven() ? model.job.itemOf(terminal.orElse("")) : null;
    }

    private LeadedConnector connector(String id, List<Plan.PinUse> pins) {
        Vehicle.Connector connector = model.job.vehicle().connectors().get(id);
        At at = connector == null ? pins.get(0).at() : connector.at();
        Shown<Boolean> plugged = Shown.of(false);
        for (Plan.PinUse pin : pins) {
            plugged = Kleene.or(plugged, pin.method().map("plug-in-harness"::equals));
        }
        Shown<String> family = connector == null ? Shown.missing(new Need("connectors." + id + ".family", "family of the connector " + id, at)) : connector.family();
        Shown<List<String>> leads = leads(id, at);
        return new LeadedConnector("connectors." + id, at, plugged, family.with(leads, (plug, known) -> known.contains(plug)),
                leads.map(known -> String.join(", ", known)), complete(id, connector, at));
    }

    /** Families that the leads of the job fit; a job without a lead has not said which it takes. */
    private Shown<List<String>> leads(String connector, At at) {
        List<Item.Harness> leads = model.job.itemsOf(Item.Harness.class);
        if (leads.isEmpty()) {
            return Shown.missing(new Need("items", "the plug-in lead that joins " + connector, model.job.planAt()));
        }
        Shown<List<String>> families = Shown.of(List.of());
        for (Item.Harness lead : leads) {
            families = families.with(lead.connectors(), (before, more) -> {
                TreeSet<String> all = new TreeSet<>(before);
                all.addAll(more);
                return List.copyOf(all);
            });
        }
        return families;
    }

    /** A lead takes every wire of its plug along, so each of them stands in the plan. */
    private Shown<Boolean> complete(String id, Vehicle.Connector connector, At at) {
        List<Need> open = new ArrayList<>();
        if (connector != null) {
            connector.cavities().keySet().stream().filter(cavity -> !model.job.plan().pins().containsKey(id + "." + cavity))
                    .forEach(cavity -> open.add(new Need("pins." + id + "." + cavity, "what the lead does with cavity " + cavity + " of " + id, at)));
        }
        return open.isEmpty() ? Shown.of(true) : Shown.missing(open);
    }

    /** The holes on the whole line from a speaker on, however many runs it is made of. */
    private Shown<List<String>> through(Run run, Item.Speaker speaker) {
        String near = end(run.from()) == speaker ? run.from().orElse("") : run.to().orElse("");
        Shown<List<String>> all = run.through();
        for (Run next : model.wiring.line(run, near)) {
            if (next != run) {
                all = all.with(next.through(), (before, more) -> {
                    List<String> both = new ArrayList<>(before);
                    both.addAll(more);
                    return both;
                });
            }
        }
        return all;
    }

    private BoxEntry entry(Run run, Item.Speaker speaker) {
        Shown<List<String>> edges = through(run, speaker).then(names -> {
            Shown<List<String>> known = Shown.of(List.of());
            for (String name : names) {
                Vehicle.PassThrough hole = model.job.passThroughs().get(name);
                Shown<String> edge = hole == null ? Shown.missing(new Need("pass-throughs." + name + ".edge", "how the hole " + name + " is finished", run.at())) : hole.edge();
                known = known.with(edge, (before, one) -> {
                    List<String> all = new ArrayList<>(before);
                    all.add(one);
                    return all;
                });
            }
            return known;
        });
        return new BoxEntry(run.path(), run.at(), Shown.of(speaker.enclosure().isGiven()),
                edges.map(all -> all.stream().anyMatch(model.limit("box-entries").words()::contains)),
                edges.map(all -> all.isEmpty() ? "no hole on its way" : String.join(", ", all)));
    }
}
