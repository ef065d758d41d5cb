package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;
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
    /** States in which values are judged; without an alternator there is no charging. */
    private final List<State> states;
    private final Map<String, SolvedCorner> relieved = new ConcurrentHashMap<>();
    private SolvedCorner bad;
    private SolvedCorner good;

    SolvedNetworks(Model model, Amplifiers amplifiers) {
        this.model = model;
        this.amplifiers = amplifiers;
        this.states = model.job.itemsOf(Item.Alternator.class).isEmpty() ? List.of(State.ON_BATTERY)
                : List.of(State.ON_BATTERY, State.CHARGING_FULL);
    }

    /** All windows at their bad ends. */
    synchronized SolvedCorner bad() {
        if (bad == null) {
            bad = at(Corner.bad(model.job.limits(), QUESTION));
        }
        return bad;
    }

    private synchronized SolvedCorner good() {
        if (good == null) {
            good = bad().corner().isWhole() ? at(Corner.good(model.job.limits(), QUESTION)) : bad();
        }
        return good;
    }

    private SolvedCorner relieved(String window) {
        return relieved.computeIfAbsent(window, name -> at(Corner.relieved(model.job.limits(), QUESTION, name)));
    }

    SolvedCorner at(Corner corner) {
        return new SolvedCorner(model, amplifiers, corner, states);
    }

    /**
     * A value at both corners.
     *
     * @param allowance share by which the two ends are moved apart, see {@link #cornerAllowance}
     */
    Shown<Double> windowed(double allowance, Function<SolvedCorner, Result> value) {
        return WindowedValue.of(bad().corner(), good().corner(), value.apply(bad()).moved(allowance), value.apply(good()).moved(-allowance),
                window -> value.apply(relieved(window)));
    }

    /**
     * How far a value may lie outside its two corners, as a share of it. With several sources what is bad for one is
     * good for another, and every joint would need a corner of its own; the two ends are moved apart by this instead.
     */
    static double cornerAllowance(Model model, Question question) {
        List<Item.Battery> batteries = model.job.itemsOf(Item.Battery.class);
        boolean joined = batteries.stream().anyMatch(one -> batteries.stream().anyMatch(other ->
                one != other && model.joined(one.id() + ".positive", other.id() + ".positive")));
        if (joined) {
            return model.value("corner-allowance-joined-batteries");
        }
        return question == Question.BALANCE && !model.job.itemsOf(Item.Converter.class).isEmpty()
                ? model.value("corner-allowance-converter") : 0;
    }
}
