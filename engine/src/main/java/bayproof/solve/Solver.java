package bayproof.solve;

import java.util.ArrayList;
import java.util.List;

/** Finds where a network settles. */
public final class Solver {
    private Solver() {
    }

    /**
     * The operating point with the highest volts. Loads below their cut-off go on drawing; loads that nothing feeds
     * draw nothing and do not disturb the rest.
     *
     * @return an {@link OperatingPoint}, or {@link NoSolution} with the loads of every part of the network that
     *         settles nowhere
     * @throws IllegalStateException if the result violates Kirchhoff's current law: a fault of this solver
     */
    public static Solution solve(Network network) {
        Wiring wiring = network.wiring();
        OperatingPoint.Values values = new OperatingPoint.Values(network);
        List<String> stranded = new ArrayList<>();
        for (Island island : wiring.islands()) {
            IslandSolver.Settled settled = new IslandSolver(network, island).highest();
            if (settled == null) {
                for (int load : island.loads()) {
                    stranded.add(network.loads().get(load).id());
                }
            } else {
                values.put(island, settled);
            }
        }
        if (!stranded.isEmpty()) {
            return noSolution(network, stranded);
        }
        OperatingPoint point = new OperatingPoint(network, values);
        Kirchhoff.check(network, point);
        return point;
    }

    private static NoSolution noSolution(Network network, List<String> stranded) {
        List<String> reversed = reversed(network);
        if (!reversed.isEmpty()) {
            return new NoSolution("their positive terminals are not above their negative terminals", reversed);
        }
        stranded.sort(null);
        return new NoSolution("they ask for more than the sources can bring through the wiring", stranded);
    }

    /** The loads that would draw, but have no positive volts even while no load of a held power or current draws. */
    private static List<String> reversed(Network network) {
        List<Load> idle = new ArrayList<>();
        List<String> drawing = new ArrayList<>();
        for (Load load : network.loads()) {
            boolean draws = false;
            if (load instanceof Load.ConstantPower power) {
                draws = power.watts() > 0;
                idle.add(new Load.ConstantPower(load.id(), load.positive(), load.negative(), 0, 0));
            } else if (load instanceof Load.ConstantCurrent current) {
                draws = current.amperes() > 0;
                idle.add(new Load.ConstantCurrent(load.id(), load.positive(), load.negative(), 0, 0));
            }
            if (draws) {
                drawing.add(load.id());
            }
        }
        List<String> reversed = new ArrayList<>();
        if (!drawing.isEmpty() && solve(network.withLoads(idle)) instanceof OperatingPoint point) {
            for (String id : drawing) {
                if (!point.unfed().contains(id) && !(point.loadVolts(id) > 0)) {
                    reversed.add(id);
                }
            }
        }
        return reversed;
    }
}
