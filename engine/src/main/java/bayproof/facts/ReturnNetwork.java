package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Item;
import bayproof.solve.NoSolution;
import bayproof.solve.OperatingPoint;
import bayproof.solve.Solution;
import bayproof.units.Dimension;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleBiFunction;

/** What the returns of a job do at one corner of the windows: the worse of the states charging full and on battery. */
final class ReturnNetwork {
    private static final Result NOT_WHOLE = new Result(Double.NaN, null, null);

    private final Corner corner;
    private final Map<State, SupplyNetwork> networks = new EnumMap<>(State.class);
    private final Map<String, Solution> solutions = new HashMap<>();

    ReturnNetwork(Model model, Amplifiers amplifiers, Corner corner) {
        this.corner = corner;
        for (State state : model.job.itemsOf(Item.Alternator.class).isEmpty() ? List.of(State.ON_BATTERY)
                : List.of(State.ON_BATTERY, State.CHARGING_FULL)) {
            networks.put(state, new SupplyNetwork(model, amplifiers, corner, state));
        }
    }

    Corner corner() {
        return corner;
    }

    /** Volts between the point an item returns to and another one, at loud programme. */
    Result offset(Item item, String landing, String point) {
        return worst(Level.LOUD_PROGRAMME, List.of(item), Dimension.VOLTAGE,
                (network, solved) -> Math.abs(solved.voltsAcross(landing, point)), "volts from " + landing + " to " + point);
    }

    /** The current that the job leads into the body, at full sine. */
    Result returned() {
        List<Item> all = corner.isWhole() ? networks.get(State.ON_BATTERY).powered() : List.of();
        return worst(Level.FULL_SINE, all, Dimension.CURRENT, SupplyNetwork::returnAmperes, "current of the job into the body");
    }

    private Result worst(Level level, List<Item> concerned, Dimension dimension, ToDoubleBiFunction<SupplyNetwork, OperatingPoint> value,
                         String what) {
        if (!corner.isWhole()) {
            return NOT_WHOLE;
        }
        Result worst = null;
        for (State state : networks.keySet()) {
            Result result = in(state, level, concerned, dimension, value, what);
            if (worst == null || result.collapse() != null || worst.collapse() == null && result.value() > worst.value()) {
                worst = result;
            }
        }
        return worst;
    }

    private Result in(State state, Level level, List<Item> concerned, Dimension dimension,
                      ToDoubleBiFunction<SupplyNetwork, OperatingPoint> value, String what) {
        String when = state.words() + ", " + level.words();
        Solution solution = solutions.computeIfAbsent(when, key -> networks.get(state).solve(level));
        if (solution instanceof NoSolution none) {
            return new Result(Double.NaN, "no working state " + when + ": " + none.reason(), null);
        }
        OperatingPoint point = (OperatingPoint) solution;
        for (Item item : concerned) {
            if (networks.get(state).isDown(point, item)) {
                return new Result(Double.NaN, "no working state " + when + ": " + item.id() + " gets less than it needs to run", null);
            }
        }
        double found = value.applyAsDouble(networks.get(state), point);
        return new Result(found, null, () -> what + " = " + Model.print(found, dimension) + " (" + when + ")");
    }
}
