package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.solve.NoSolution;
import bayproof.solve.OperatingPoint;
import bayproof.solve.Solution;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;

/** The network of a job at one corner of its windows, in each state; each state is solved once a level, when first asked. */
final class SolvedCorner {
    private static final Result NOT_WHOLE = new Result(Double.NaN, null, null);

    private final Corner corner;
    private final boolean whole;
    private final Map<State, SupplyNetwork> networks = new EnumMap<>(State.class);
    private final Map<State, Map<Level, Settled>> settled = new EnumMap<>(State.class);

    SolvedCorner(Model model, Amplifiers amplifiers, Corner corner, List<State> states) {
        this.corner = corner;
        for (State state : states) {
            networks.put(state, new SupplyNetwork(model, amplifiers, corner, state));
            settled.put(state, new EnumMap<>(Level.class));
        }
        this.whole = corner.isWhole();
    }

    /**
     * Where the network settles in one state at one level.
     *
     * @param point null where it settles nowhere
     * @param why   why it does not; null where it does
     * @param down  items that get less than they need to run
     */
    record Settled(State state, Level level, SupplyNetwork network, OperatingPoint point, String why, List<Item> down) {
        String when() {
            return state.words() + ", " + level.words();
        }

        /** Why some of the items do not work here; null where all of them do. */
        String collapse(Predicate<Item> concerned) {
            if (point == null) {
                return "no working state " + when() + ": " + why;
            }
            for (Item item : down) {
                if (concerned.test(item)) {
                    return "no working state " + when() + ": " + item.id() + " gets "
                            + SupplyNetwork.volts(point.voltsAcross(item.id() + ".supply", item.id() + ".ground")) + ", less than it needs to run";
                }
            }
            return null;
        }
    }

    Corner corner() {
        return corner;
    }

    boolean isWhole() {
        return whole;
    }

    /** Asks for a state in which the corner {@linkplain Corner#isWhole() is whole}. */
    synchronized Settled settled(State state, Level level) {
        return settled.get(state).computeIfAbsent(level, any -> {
            SupplyNetwork network = networks.get(state);
            Solution solution = network.solve(level);
            return solution instanceof OperatingPoint point
                    ? new Settled(state, level, network, point, null, network.powered().stream().filter(item -> network.isDown(point, item)).toList())
                    : new Settled(state, level, network, null, ((NoSolution) solution).reason(), List.of());
        });
    }

    /**
     * The larger value of the states; none where in one of them an item concerned does not work.
     *
     * @param value told for a state in which all items concerned work
     */
    Result worst(Level level, Predicate<Item> concerned, Function<Settled, Result> value) {
        if (!whole) {
            return NOT_WHOLE;
        }
        Result worst = null;
        for (State state : networks.keySet()) {
            Settled here = settled(state, level);
            String collapse = here.collapse(concerned);
            Result result = collapse == null ? value.apply(here) : new Result(Double.NaN, collapse, null);
            if (worst == null || result.collapse() != null || worst.collapse() == null && result.value() > worst.value()) {
                worst = result;
            }
        }
        return worst;
    }
}
