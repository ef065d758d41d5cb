package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.Role;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Run;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The live side of the wiring seen from the live posts of its sources, that is batteries' positive posts and the outputs
 * of alternators and converters: for each terminal the way back to its post. Factory links are left out: their
 * protection is the vehicle maker's.
 */
final class FeedTree {
    private final Model model;
    /** For each terminal reached: the edge it was reached by, from the post side. */
    private final Map<String, Link> reachedBy = new LinkedHashMap<>();
    private final Map<String, String> parent = new HashMap<>();
    private final List<Departure> departures = new ArrayList<>();

    /** A run at the live post of a source. */
    record Departure(Run run, String post, Item source) {
    }

    FeedTree(Model model) {
        this.model = model;
        ArrayDeque<String> open = new ArrayDeque<>();
        // Batteries first: what a battery feeds is told from its post even where a charger feeds it as well.
        model.job.itemsOf(Item.Battery.class).forEach(battery -> open.add(battery.id() + ".positive"));
        model.job.itemsOf(Item.Charger.class).forEach(charger -> open.add(charger.id() + ".output"));
        model.job.itemsOf(Item.Converter.class).forEach(converter -> open.add(converter.id() + ".out"));
        open.forEach(post -> reachedBy.put(post, null));
        while (!open.isEmpty()) {
            String terminal = open.remove();
            for (Link link : model.wiring.at(terminal)) {
                if (!isFeed(link)) {
                    continue;
                }
                if (reachedBy.get(terminal) == null && link.run() != null) {
                    departures.add(new Departure(link.run(), terminal, model.job.itemOf(terminal)));
                }
                String next = link.other(terminal);
                if (!reachedBy.containsKey(next)) {
                    reachedBy.put(next, link);
                    parent.put(next, terminal);
                    open.add(next);
                }
            }
        }
    }

    private boolean isFeed(Link link) {
        return link.kind() == Link.Kind.FUSE || link.kind() == Link.Kind.CONTACTS
                || link.kind() == Link.Kind.RUN && !model.job.isFactory(link.run()) && model.wiring.role(link.run()) == Role.FEED;
    }

    /** Runs at the live posts of sources; one that joins two posts stands here for each of them. */
    List<Departure> departures() {
        return departures;
    }

    boolean reaches(String terminal) {
        return reachedBy.containsKey(terminal);
    }

    /** The end of a run nearer to the post; null when no source feeds it. */
    String nearEnd(Link run) {
        if (reachedBy.get(run.to()) == run) {
            return run.from();
        }
        if (reachedBy.get(run.from()) == run) {
            return run.to();
        }
        return reaches(run.from()) ? run.from() : reaches(run.to()) ? run.to() : null;
    }

    /** The edges from a terminal back to its post, nearest first. */
    List<Link> back(String terminal) {
        List<Link> way = new ArrayList<>();
        for (String at = terminal; reachedBy.get(at) != null; at = parent.get(at)) {
            way.add(reachedBy.get(at));
        }
        return way;
    }

    /** The first fuses on every way from a terminal back to a source: cables side by side have one each. */
    Set<Link> nearestFuses(String terminal) {
        Set<Link> fuses = new LinkedHashSet<>();
        Set<String> seen = new HashSet<>(Set.of(terminal));
        ArrayDeque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            String at = open.remove();
            for (Link link : model.wiring.at(at)) {
                String next = link.other(at);
                if (!isFeed(link) || !next.equals(nearEnd(link))) {
                    continue;
                }
                if (link.kind() == Link.Kind.FUSE) {
                    fuses.add(link);
                } else if (seen.add(next)) {
                    open.add(next);
                }
            }
        }
        return fuses;
    }

    /** Edges onward from the far end of a run, the run itself left out. */
    List<Link> onward(Link link, String nearEnd) {
        String far = link.other(nearEnd);
        return model.wiring.at(far).stream().filter(next -> next != link && isFeed(next)).toList();
    }

    /** Whether a terminal is the live post of a source. */
    boolean isPost(String terminal) {
        return reaches(terminal) && reachedBy.get(terminal) == null;
    }

    static boolean isOpen(String terminal) {
        return WiringGraph.isOpen(terminal);
    }
}
