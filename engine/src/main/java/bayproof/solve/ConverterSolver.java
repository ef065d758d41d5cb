package bayproof.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds where a network with converters settles. Output and input of a converter meet only through the returns they
 * share, so what its input draws is found by a few rounds: solve, see what the output gives, draw that at the input.
 */
public final class ConverterSolver {
    /** Rounds that shrink by half each come to 1e-12 of the first. */
    private static final int MOST_ROUNDS = 40;
    /** Relative change of a converter's input power between two rounds. */
    private static final double SETTLED = 1e-9;

    private ConverterSolver() {
    }

    /**
     * The operating point in which every converter draws what it gives over its efficiency. What the loads of its
     * inputs hold in {@code network} makes no difference.
     *
     * @return as {@link Solver#solve}; {@link NoSolution} with the inputs also where what they draw keeps changing
     * @throws IllegalArgumentException if the network has no regulated source or no load of a converter's ids
     */
    public static Solution solve(Network network, List<Converter> converters) {
        Network loaded = network.withLoads(inputs(network, converters, new double[converters.size()]));
        double[] watts = new double[converters.size()];
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Solution solution = Solver.solve(loaded);
            if (!(solution instanceof OperatingPoint point)) {
                return solution;
            }
            boolean settled = true;
            for (int c = 0; c < watts.length; c++) {
                double drawn = outputWatts(network, converters.get(c), point) / converters.get(c).efficiency();
                settled &= Math.abs(drawn - watts[c]) <= SETTLED * Math.max(1, drawn);
                watts[c] = drawn;
            }
            if (settled) {
                return solution;
            }
            loaded = loaded.withLoads(inputs(loaded, converters, watts));
        }
        return new NoSolution("what they draw does not settle: output and input depend on each other too much",
                converters.stream().map(Converter::input).sorted().toList());
    }

    private static double outputWatts(Network network, Converter converter, OperatingPoint point) {
        Source output = network.sources().get(network.wiring().source(converter.source()));
        // A source that holds its set point may be told to give a rounding error less than nothing.
        return Math.max(0, point.sourceAmperes(converter.source()) * point.voltsAcross(output.positive(), output.negative()));
    }

    private static List<Load> inputs(Network network, List<Converter> converters, double[] watts) {
        List<Load> inputs = new ArrayList<>();
        for (int c = 0; c < watts.length; c++) {
            Load load = network.loads().get(network.wiring().load(converters.get(c).input()));
            inputs.add(new Load.ConstantPower(load.id(), load.positive(), load.negative(), watts[c], load.cutOffVolts()));
        }
        return inputs;
    }
}
