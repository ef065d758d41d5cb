package bayproof.facts;

import bayproof.facts.WindowedValue.Ends;
import bayproof.facts.WindowedValue.Result;
import bayproof.graph.Link;
import bayproof.graph.ParallelWays;
import bayproof.read.Item;
import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The current in a fuse or conductor, whichever way it flows, in the worse of the states.
 *
 * <p>The corners of a drop are those of a current wherever loads alone decide it. Two more kinds of current have more
 * corners: one that divides between parallel ways is largest when its own way is good and the others bad, and where
 * batteries are joined by a conductor each may be strong while the other is weak; there a hair is left over, and both ends
 * are moved by a named share. Both ends of a current on the way through a converter are moved by a named share of its
 * limit: what is bad for its input is good for its output.
 */
final class LinkCurrents {
    private static final double PER_AMPERE = 1e6;

    private final Model model;
    private final SolvedNetworks networks;
    private final ParallelWays parallel;
    private final Map<Link, Double> throughConverters = new HashMap<>();
    /** By item, the edges its current passes on its way from a battery and back. */
    private final Map<String, Set<Link>> ways = new ConcurrentHashMap<>();

    LinkCurrents(Model model, SolvedNetworks networks) {
        this.model = model;
        this.networks = networks;
        this.parallel = new ParallelWays(model.job, model.wiring);
        for (Item.Battery one : model.job.itemsOf(Item.Battery.class)) {
            for (Item.Converter converter : model.job.itemsOf(Item.Converter.class)) {
                double most = converter.limitAmperes().orElse(0.0);
                for (List<Link> way : List.of(way(one.id() + ".positive", converter.id() + ".in"),
                        way(converter.id() + ".out", one.id() + ".positive"), way(converter.id() + ".common", one.id() + ".negative"))) {
                    way.forEach(link -> throughConverters.merge(link, most, Math::max));
                }
            }
        }
    }

    private List<Link> way(String from, String to) {
        List<Link> way = model.wiring.way(from, to);
        return way == null ? List.of() : way;
    }

    Shown<Double> of(Link link, Level level) {
        return networks.windowed(ends(link, level), corner -> at(link, level, corner));
    }

    /** Both ends of the current in a link, as they are judged. */
    Ends ends(Link link, Level level) {
        SolvedCorner bad = networks.bad();
        Ends ends = new Ends(at(link, level, bad), at(link, level, networks.good()));
        if (!bad.isWhole()) {
            return ends;
        }
        List<SolvedCorner> more = moreCorners(link);
        if (!more.isEmpty()) {
            ends = widened(ends, link, level, more);
        }
        double share = networks.sourcesApart().isEmpty() ? 0 : model.value("corner-allowance-joined-batteries-current");
        ends = new Ends(ends.bad().moved(share), ends.good().moved(-share));
        double allowance = model.value("corner-allowance-converter-current") * throughConverters.getOrDefault(link, 0.0);
        return new Ends(ends.bad().plus(allowance), ends.good().collapse() != null ? ends.good()
                : ends.good().plus(-Math.min(allowance, ends.good().value())));
    }

    /** The larger current of the states at one corner; an item below its cut-off whose current passes here leaves none to judge. */
    Result at(Link link, Level level, SolvedCorner corner) {
        return corner.worst(level, item -> hangsOn(item, link), here -> {
            double amperes = Math.abs(signed(link, here));
            return new Result(amperes, null, () -> Model.print(amperes, Dimension.CURRENT) + " (" + here.when() + ")");
        });
    }

    /** A current is told from small differences of volts: what lies below a microampere is rounding. */
    private static double signed(Link link, SolvedCorner.Settled here) {
        return Math.rint(SupplyNetwork.amperes(here.point(), link) * PER_AMPERE) / PER_AMPERE;
    }

    private List<SolvedCorner> moreCorners(Link link) {
        List<SolvedCorner> corners = new ArrayList<>();
        if (parallel.has(link)) {
            Set<String> own = new HashSet<>();
            parallel.inSeries(link).forEach(one -> own.add(one.run() == null ? one.item().path() : one.run().path()));
            corners.addAll(networks.apart(own));
        }
        corners.addAll(networks.sourcesApart());
        return corners;
    }

    /** Within a state the current lies between the least and the most of all corners, and at nothing where it turns round. */
    private Ends widened(Ends ends, Link link, Level level, List<SolvedCorner> more) {
        List<SolvedCorner> corners = new ArrayList<>(more);
        corners.add(networks.bad());
        corners.add(networks.good());
        String collapse = ends.bad().collapse();
        double bad = 0;
        double good = 0;
        for (State state : networks.states()) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (SolvedCorner corner : corners) {
                SolvedCorner.Settled here = corner.settled(state, level);
                String why = here.collapse(item -> hangsOn(item, link));
                collapse = collapse == null ? why : collapse;
                if (why == null) {
                    least = Math.min(least, signed(link, here));
                    most = Math.max(most, signed(link, here));
                }
            }
            if (least <= most) {
                bad = Math.max(bad, Math.max(-least, most));
                good = Math.max(good, least <= 0 && most >= 0 ? 0 : Math.min(Math.abs(least), Math.abs(most)));
            }
        }
        double amperes = bad;
        return new Ends(collapse != null ? new Result(Double.NaN, collapse, null)
                : new Result(amperes, null, () -> Model.print(amperes, Dimension.CURRENT) + " at the most of several ways"),
                ends.good().collapse() != null ? ends.good() : new Result(good, null, ends.good().calculation()));
    }

    /** Whether the current of an item passes a fuse or run on its way from the battery or back. */
    private boolean hangsOn(Item item, Link link) {
        return ways.computeIfAbsent(item.id(), id -> {
            Set<Link> all = new HashSet<>();
            for (Item.Battery battery : model.job.itemsOf(Item.Battery.class)) {
                List<Link> there = way(battery.id() + ".positive", id + ".supply");
                List<Link> back = way(id + ".ground", battery.id() + ".negative");
                if (!there.isEmpty() && !back.isEmpty()) {
                    all.addAll(there);
                    all.addAll(back);
                }
            }
            return all;
        }).contains(link);
    }
}
