package bayproof.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What must hold for every network. */
class SolverPropertiesTest {
    @Property(tries = 400)
    void currentsAndPowersBalance(@ForAll long seed, @ForAll @IntRange(max = 3) int kind, @ForAll boolean meshed) {
        Network network = new RandomNetworks(seed).make(kind, meshed);
        if (!(Solver.solve(network) instanceof OperatingPoint point)) {
            return;
        }
        int count = network.nodes().size();
        double[] out = new double[count];
        double given = 0;
        double used = 0;
        double most = 0;
        for (Branch branch : network.branches()) {
            double amperes = point.branchAmperes(branch.id());
            flow(network, out, branch.from(), branch.to(), amperes);
            used += amperes * amperes * branch.ohms();
            most = Math.max(most, Math.abs(amperes));
            assertEquals(point.voltsAcross(branch.from(), branch.to()), amperes * branch.ohms(), 1e-12);
        }
        for (Load load : network.loads()) {
            double amperes = point.loadAmperes(load.id());
            flow(network, out, load.positive(), load.negative(), amperes);
            used += amperes * point.loadVolts(load.id());
            if (load instanceof Load.ConstantPower power) {
                assertEquals(power.watts(), amperes * point.loadVolts(load.id()), 1e-9 * power.watts());
            }
        }
        for (Source source : network.sources()) {
            double amperes = point.sourceAmperes(source.id());
            flow(network, out, source.negative(), source.positive(), amperes);
            given += amperes * point.voltsAcross(source.positive(), source.negative());
        }
        for (int node = 0; node < count; node++) {
            assertEquals(0, out[node], 1e-9 * most, network.nodes().get(node));
        }
        assertEquals(given, used, 1e-9 * Math.abs(used));
    }

    private static void flow(Network network, double[] out, String from, String to, double amperes) {
        out[Collections.binarySearch(network.nodes(), from)] += amperes;
        out[Collections.binarySearch(network.nodes(), to)] -= amperes;
    }

    @Property(tries = 200)
    void theOrderOfTheInputMakesNoDifference(@ForAll long seed, @ForAll @IntRange(max = 3) int kind,
            @ForAll long shuffle) {
        Network network = new RandomNetworks(seed).make(kind, true);
        List<Consumer<Network.Builder>> calls = calls(network, 1, id -> id);
        Collections.shuffle(calls, new Random(shuffle));

        same(network, built(network, calls), 0);
    }

    @Property(tries = 200)
    void theNamesOfTheSourcesMakeNoDifference(@ForAll long seed, @ForAll @IntRange(max = 3) int kind) {
        Network network = new RandomNetworks(seed).make(kind, true);
        // The alternator comes before the battery, or after it: its conditions are tried in another order.
        same(network, built(network, calls(network, 1, id -> id.equals("alternator") ? "z" : id)), 1e-9);
    }

    @Property(tries = 200)
    void voltsStayWhenAllCurrentsShrinkAndResistancesGrow(@ForAll long seed, @ForAll @IntRange(max = 3) int kind,
            @ForAll @DoubleRange(min = 0.01, max = 100) double factor) {
        Network network = new RandomNetworks(seed).make(kind, true);

        same(network, built(network, calls(network, factor, id -> id)), 1e-7);
    }

    @Property
    void theMostPowerOfALoop(@ForAll @DoubleRange(min = 1, max = 60) double restVolts,
            @ForAll @DoubleRange(min = 0.001, max = 1) @Scale(4) double insideOhms,
            @ForAll @DoubleRange(min = 0.001, max = 1) @Scale(4) double wireOhms) {
        double mostWatts = restVolts * restVolts / (4 * (insideOhms + wireOhms));

        // V = E / 2 (1 + sqrt(1 - P / most)): 1e-8 below the most, the root is 1e-4 from the middle.
        OperatingPoint below = assertInstanceOf(OperatingPoint.class,
                Solver.solve(loop(restVolts, insideOhms, wireOhms, mostWatts * (1 - 1e-8))));
        assertEquals(restVolts / 2 * (1 + 1e-4), below.loadVolts("load"), 1e-7 * restVolts);
        assertInstanceOf(NoSolution.class,
                Solver.solve(loop(restVolts, insideOhms, wireOhms, mostWatts * (1 + 1e-8))));
    }

    private static Network loop(double restVolts, double insideOhms, double wireOhms, double watts) {
        return new Network.Builder("minus")
                .battery("battery", "plus", "minus", restVolts, insideOhms, 0)
                .branch("wire", "plus", "far", wireOhms)
                .constantPower("load", "far", "minus", watts, 0)
                .build();
    }

    /** The calls that make a network again, with all resistances multiplied and all currents and powers divided. */
    private static List<Consumer<Network.Builder>> calls(Network network, double factor, UnaryOperator<String> name) {
        List<Consumer<Network.Builder>> calls = new ArrayList<>();
        for (Branch b : network.branches()) {
            calls.add(builder -> builder.branch(b.id(), b.from(), b.to(), b.ohms() * factor));
        }
        for (Source source : network.sources()) {
            String id = name.apply(source.id());
            if (source instanceof Source.Battery s) {
                calls.add(builder -> builder.battery(id, s.positive(), s.negative(), s.restVolts(),
                        s.internalOhms() * factor, s.acceptanceAmperes() / factor));
            } else if (source instanceof Source.Regulated s) {
                calls.add(builder -> builder.regulated(id, s.positive(), s.negative(), s.setVolts(),
                        s.limitAmperes() / factor));
            }
        }
        for (Load load : network.loads()) {
            if (load instanceof Load.ConstantPower l) {
                calls.add(builder -> builder.constantPower(l.id(), l.positive(), l.negative(), l.watts() / factor,
                        l.cutOffVolts()));
            } else if (load instanceof Load.ConstantCurrent l) {
                calls.add(builder -> builder.constantCurrent(l.id(), l.positive(), l.negative(), l.amperes() / factor,
                        l.cutOffVolts()));
            } else if (load instanceof Load.Resistive l) {
                calls.add(builder -> builder.resistive(l.id(), l.positive(), l.negative(), l.ohms() * factor,
                        l.cutOffVolts()));
            }
        }
        return calls;
    }

    private static Network built(Network network, List<Consumer<Network.Builder>> calls) {
        Network.Builder builder = new Network.Builder(network.reference());
        calls.forEach(call -> call.accept(builder));
        return builder.build();
    }

    private static void same(Network first, Network second, double tolerance) {
        Solution one = Solver.solve(first);
        Solution other = Solver.solve(second);
        if (one instanceof OperatingPoint p && other instanceof OperatingPoint q) {
            for (String node : first.nodes()) {
                assertTrue(Math.abs(p.voltsAt(node) - q.voltsAt(node)) <= tolerance, node);
            }
            assertEquals(p.belowCutOff(), q.belowCutOff());
        } else {
            assertEquals(one, other);
        }
    }
}
