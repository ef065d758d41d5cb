package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.RelayCoil;
import bayproof.vocabulary.RelayContacts;
import bayproof.vocabulary.Shown;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about relays: what the fuse of their circuit lets through their contacts, and how their coil is fed. */
final class RelayFacts {
    private final Model model;
    private final FeedTree feeds;
    private final Ladders ladders;

    RelayFacts(Model model) {
        this.model = model;
        this.feeds = model.feeds();
        this.ladders = new Ladders(model);
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Relay relay : model.job.itemsOf(Item.Relay.class)) {
            facts.accept(contacts(relay));
            facts.accept(coil(relay));
        }
    }

    // contacts

    private RelayContacts contacts(Item.Relay relay) {
        Link link = model.wiring.contacts(relay);
        String near = feeds.nearEnd(link);
        if (near == null) {
            Shown<Boolean> unfed = unfed("the run that feeds " + relay.id() + ".30", relay);
            return new RelayContacts(relay.path(), relay.at(), unfed, unfed.map(x -> 0.0), relay.contactAmperes(), null);
        }
        Set<Link> fuses = feeds.nearestFuses(near);
        boolean fused = !fuses.isEmpty();
        if (!fused) {
            fuses = new LinkedHashSet<>();
            fused = fusedBehind(link, near, fuses, new HashSet<>());
        }
        Shown<Double> amperes = sum(fuses);
        Link only = fuses.size() == 1 ? fuses.iterator().next() : null;
        Knob smaller = only != null && only.ratingAmperes().isGiven() ? ladders.weaker(only.id(), only.ratingAmperes().orElse(0.0)) : null;
        return new RelayContacts(relay.path(), relay.at(), Shown.of(fused), amperes, relay.contactAmperes(), smaller);
    }

    /** Whether a fuse stands in every way onward; the first of each are gathered. */
    private boolean fusedBehind(Link link, String near, Set<Link> fuses, Set<Link> seen) {
        if (!seen.add(link)) {
            return true;
        }
        if (link.kind() == Link.Kind.FUSE) {
            fuses.add(link);
            return true;
        }
        List<Link> onward = feeds.onward(link, near);
        boolean all = !onward.isEmpty();
        for (Link next : onward) {
            all &= fusedBehind(next, link.other(near), fuses, seen);
        }
        return all;
    }

    private static Shown<Double> sum(Collection<Link> fuses) {
        Shown<Double> sum = Shown.of(0.0);
        List<String> ids = new ArrayList<>();
        for (Link fuse : fuses) {
            sum = sum.with(fuse.ratingAmperes(), Double::sum);
            ids.add(fuse.id());
        }
        return sum.then(total -> Shown.of(total, () -> String.join(" + ", ids)));
    }

    // coil

    private RelayCoil coil(Item.Relay relay) {
        Shown<Boolean> damped = relay.damped().map(by -> !by.equals("none"));
        String live = live(relay);
        Shown<Boolean> joined = joined(relay);
        if (live == null || !joined.isGiven()) {
            Shown<Boolean> driven = joined.isGiven() ? driven(relay) : joined;
            return new RelayCoil(relay.path(), relay.at(), driven.map(yes -> false), driven, driven.map(x -> 0.0), damped);
        }
        Set<Link> fuses = feeds.nearestFuses(live);
        List<Link> own = fuses.stream().filter(this::feedsCoilsAlone).toList();
        return new RelayCoil(relay.path(), relay.at(), Shown.of(true), Shown.of(!own.isEmpty() && own.size() == fuses.size()), sum(fuses), damped);
    }

    /** Whether both ends of the coil are joined to something: before that nobody knows which of them is fed. */
    private Shown<Boolean> joined(Item.Relay relay) {
        for (String end : List.of(relay.id() + ".86", relay.id() + ".85")) {
            boolean run = model.wiring.at(end).stream().anyMatch(link -> link.kind() == Link.Kind.RUN);
            if (!run && model.job.plan().pins().values().stream().noneMatch(pin -> end.equals(pin.connectedTo().orElse("")))) {
                return unfed("the wire to " + end, relay);
            }
        }
        return Shown.of(true);
    }

    /** The end of the coil that a source feeds; null where none does. */
    private String live(Item.Relay relay) {
        return List.of(".86", ".85").stream().map(name -> relay.id() + name).filter(feeds::reaches).findFirst().orElse(null);
    }

    /** A coil that no source feeds is driven by an output or a factory wire, or its wire is not written yet. */
    private Shown<Boolean> driven(Item.Relay relay) {
        Set<String> net = model.wiring.net(relay.id() + ".86");
        boolean pin = model.job.plan().pins().values().stream().anyMatch(use -> net.contains(use.connectedTo().orElse("")));
        return pin || net.stream().anyMatch(terminal -> !terminal.startsWith(relay.id() + ".") && !FeedTree.isOpen(terminal)) ? Shown.of(true) : unfed("the wire to " + relay.id() + ".86", relay);
    }

    /** Whether nothing but coils of relays hangs on a fuse. */
    private boolean feedsCoilsAlone(Link fuse) {
        Set<String> seen = new HashSet<>();
        String near = feeds.nearEnd(fuse);
        seen.add(near);
        ArrayDeque<String> ends = new ArrayDeque<>(List.of(fuse.other(near)));
        while (!ends.isEmpty()) {
            String here = ends.remove();
            if (!seen.add(here)) {
                continue;
            }
            Item item = model.job.itemOf(here);
            if (item != null && item != fuse.item() && !(item instanceof Item.Relay && (here.endsWith(".86") || here.endsWith(".85")))) {
                return false;
            }
            for (Link link : model.wiring.at(here)) {
                if (link.kind() == Link.Kind.RUN) {
                    ends.add(link.other(here));
                }
            }
        }
        return true;
    }

    private static Shown<Boolean> unfed(String ask, Item.Relay relay) {
        return Shown.missing(new Need("runs", ask, relay.at()));
    }
}
