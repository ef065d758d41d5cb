package bayproof.facts;

import bayproof.facts.WindowedValue.Ends;
import bayproof.facts.WindowedValue.Result;
import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * The network of a job at the corners that drops, currents and returns ask for, each built when first asked and then kept
 * for all of them. What is bad for a drop is bad for a current too: constant-power loads draw most where they get least.
 */
final class SolvedNetworks {
    private static final Question QUESTION = Question.DROP;

    private final Model model;
    private final Amplifiers amplifiers;
    /** States in which values are judged; without anything that charges there is no charging. */
    private final List<State> states;
    private final Map<String, SolvedCorner> relieved = new ConcurrentHashMap<>();
    private final Map<Set<String>, List<SolvedCorner>> apart = new ConcurrentHashMap<>();
    private List<SolvedCorner> sourcesApart;
    private SolvedCorner bad;
    private SolvedCorner good;

    SolvedNetworks(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
        this.states = model.job.itemsOf(Item.Charger.class).isEmpty() ? List.of(State.ON_BATTERY)
                : List.of(State.ON_BATTERY, State.CHARGING_FULL);
    }

    /** All windows at their bad ends. */
    synchronized SolvedCorner bad() {
        if (bad == null) {
            bad = at(Corner.bad(model.job.limits(), QUESTION));
        }
        return bad;
    }

    /** All windows at their good ends. */
    synchronized SolvedCorner good() {
        if (good == null) {
            good = bad().corner().isWhole() ? at(Corner.good(model.job.limits(), QUESTION)) : bad();
        }
        return good;
    }

    private SolvedCorner relieved(String window) {
        return relieved.computeIfAbsent(window, name -> at(Corner.relieved(model.job.limits(), QUESTION, name)));
    }

    /** Both corners with the windows of some runs or items at the end that is the good one, or the bad one, for all others. */
    List<SolvedCorner> apart(Set<String> paths) {
        return apart.computeIfAbsent(paths, own -> List.of(at(Corner.apart(model.job.limits(), QUESTION, true, own)),
                at(Corner.apart(model.job.limits(), QUESTION, false, own))));
    }

    List<State> states() {
        return states;
    }

    SolvedCorner at(Corner corner) {
        return new SolvedCorner(model, amplifiers, corner, states);
    }

    /**
     * A value at its corners.
     *
     * @param allowance share by which the two ends are moved apart, see {@link #cornerAllowance}
     */
    Shown<Double> windowed(double allowance, Function<SolvedCorner, Result> value) {
        return windowed(ends(allowance, value), value);
    }

    /** A value whose ends are worked out already. */
    Shown<Double> windowed(Ends ends, Function<SolvedCorner, Result> value) {
        return WindowedValue.of(bad().corner(), good().corner(), ends.bad(), ends.good(), window -> value.apply(relieved(window)));
    }

    /** Both ends of a value: the worst and the best of its corners. */
    Ends ends(double allowance, Function<SolvedCorner, Result> value) {
        Result bad = value.apply(bad());
        Result good = value.apply(good());
        if (bad().isWhole()) {
            for (SolvedCorner corner : sourcesApart()) {
                Result here = value.apply(corner);
                bad = bad.collapse() != null || here.collapse() == null && here.value() <= bad.value() ? bad : here;
                good = here.collapse() != null || good.collapse() == null && here.value() >= good.value() ? good : here;
            }
        }
        return new Ends(bad.moved(allowance), good.moved(-allowance));
    }

    /**
     * Corners with one or two of the sources, or of what joins them, apart from the rest, where batteries are joined by a
     * conductor: what is strong of one is then weak of another. None in any other job.
     */
    synchronized List<SolvedCorner> sourcesApart() {
        if (sourcesApart == null) {
            List<Set<String>> groups = joinsBatteries(model) ? groups() : List.of();
            Set<Set<String>> pairs = new LinkedHashSet<>();
            for (Set<String> one : groups) {
                for (Set<String> other : groups) {
                    Set<String> both = new TreeSet<>(one);
                    both.addAll(other);
                    pairs.add(both);
                }
            }
            sourcesApart = pairs.stream().flatMap(paths -> apart(paths).stream()).toList();
        }
        return sourcesApart;
    }

    private List<Set<String>> groups() {
        List<Set<String>> groups = new ArrayList<>();
        Set<String> between = new TreeSet<>();
        List<Item.Battery> batteries = model.job.itemsOf(Item.Battery.class);
        for (Item.Battery one : batteries) {
            groups.add(Set.of(one.path()));
            for (Item.Battery other : batteries) {
                for (String post : List.of(".positive", ".negative")) {
                    List<Link> way = one == other ? null : model.wiring.way(one.id() + post, other.id() + post);
                    if (way != null) {
                        way.forEach(link -> between.add(link.run() == null ? link.item().path() : link.run().path()));
                    }
                }
            }
        }
        model.job.itemsOf(Item.Charger.class).forEach(charger -> groups.add(Set.of(charger.path())));
        groups.add(between);
        return groups;
    }

    /**
     * How far a value may lie outside its two corners, as a share of it. With several sources what is bad for one is
     * good for another, and every joint would need a corner of its own; the two ends are moved apart by this instead.
     */
    static double cornerAllowance(Model model, Question question) {
        if (joinsBatteries(model)) {
            return model.value("corner-allowance-joined-batteries");
        }
        return question == Question.BALANCE && !model.job.itemsOf(Item.Converter.class).isEmpty()
                ? model.value("corner-allowance-converter") : 0;
    }

    private static boolean joinsBatteries(Model model) {
        List<Item.Battery> batteries = model.job.itemsOf(Item.Battery.class);
        return batteries.stream().anyMatch(one -> batteries.stream().anyMatch(other ->
                one != other && model.joined(one.id() + ".positive", other.id() + ".positive")));
    }
}
