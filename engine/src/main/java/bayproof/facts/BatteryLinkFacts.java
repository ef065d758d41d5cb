package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.units.Dimension;
import bayproof.vocabulary.BatteryLink;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Shown;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about what joins two batteries: a converter, or a relay with a battery on either side of its contacts. */
final class BatteryLinkFacts {
    private final Model model;
    private final SolvedNetworks networks;

    BatteryLinkFacts(Model model, SolvedNetworks networks) {
        this.model = model;
        this.networks = networks;
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Converter converter : model.job.itemsOf(Item.Converter.class)) {
            facts.accept(new BatteryLink(converter.path(), converter.at(), converter.limitAmperes(), converter.ratedAmperes()));
        }
        for (Item.Relay relay : model.job.itemsOf(Item.Relay.class)) {
            if (joinsBatteries(relay)) {
                facts.accept(new BatteryLink(relay.path(), relay.at(), amperes(relay), relay.contactAmperes()));
            }
        }
    }

    private Shown<Double> amperes(Item.Relay relay) {
        Link contacts = model.wiring.contacts(relay);
        Shown<Double> amperes = new LinkCurrents(model, networks).of(contacts, Level.FULL_SINE);
        if (amperes instanceof Shown.Given<Double> given) {
            model.numbers.put(relay.path() + ".current-full-sine", given.value(), Dimension.CURRENT, given.calculation());
        }
        return amperes;
    }

    private boolean joinsBatteries(Item.Relay relay) {
        Set<String> one = batteries(relay.id() + ".30", relay);
        Set<String> other = batteries(relay.id() + ".87", relay);
        return !one.isEmpty() && !other.isEmpty() && !one.equals(other);
    }

    /** Batteries that a terminal reaches without going through this relay or the body. */
    private Set<String> batteries(String from, Item.Relay relay) {
        Set<String> found = new TreeSet<>();
        for (String terminal : model.wiring.reached(from, link -> link.item() != relay && link.kind() != Link.Kind.BODY)) {
            if (model.job.itemOf(terminal) instanceof Item.Battery battery) {
                found.add(battery.id());
            }
        }
        return found;
    }
}
