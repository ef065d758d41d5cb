package bayproof.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where a network settles. Volts are V, currents A. Every method with an id or a node name throws
 * {@link IllegalArgumentException} if the network has none of that name.
 */
public final class OperatingPoint implements Solution {
    private final Network network;
    private final Wiring wiring;
    private final Values values;
    private final double[] localVolts;
    private final List<String> belowCutOff;

    OperatingPoint(Network network, Values values) {
        this.network = network;
        this.wiring = network.wiring();
        this.values = values;
        this.localVolts = wiring.elimination().volts(values.injectedAmperes);
        this.belowCutOff = IntStream.range(0, network.loads().size())
                .filter(load -> loadVolts(load) < network.loads().get(load).cutOffVolts()).mapToObj(load -> network.loads().get(load).id()).toList();
    }

    /** What the islands settled on, put together for the whole network. */
    static final class Values {
        private final double[] injectedAmperes;
        private final double[] rootVolts;
        private final double[] sourceAmperes;
        private final Condition[] conditions;

        Values(Network network) {
            injectedAmperes = new double[network.nodes().size()];
            rootVolts = new double[network.nodes().size()];
            sourceAmperes = new double[network.sources().size()];
            conditions = new Condition[network.sources().size()];
        }

        void put(Island island, IslandSolver.Settled settled) {
            for (int piece = 0; piece < island.roots().length; piece++) {
                rootVolts[island.roots()[piece]] = settled.rootVolts()[piece];
            }
            for (int s = 0; s < island.sources().length; s++) {
                sourceAmperes[island.sources()[s]] = -settled.takenAmperes()[s];
                conditions[island.sources()[s]] = settled.conditions()[s];
            }
            for (int e = 0; e < settled.takenAmperes().length; e++) {
                injectedAmperes[island.positiveNode(e)] -= settled.takenAmperes()[e];
                injectedAmperes[island.negativeNode(e)] += settled.takenAmperes()[e];
            }
        }
    }

    /**
     * The volts of a node against the reference node.
     *
     * @throws IllegalArgumentException also if nothing {@linkplain #joined joins} the two
     */
    double voltsAt(String node) {
        return voltsAcross(node, network.reference());
    }

    /**
     * The volts of the first node against the second.
     *
     * @throws IllegalArgumentException also if nothing {@linkplain #joined joins} the two
     */
    public double voltsAcross(String positive, String negative) {
        int one = wiring.node(positive);
        int other = wiring.node(negative);
        if (!wiring.joined(one, other)) {
            throw new IllegalArgumentException(
                    "no volts between " + positive + " and " + negative + ": neither branch nor source joins them");
        }
        return voltsAcross(one, other);
    }

    /** Whether branches and sources join two nodes, so that there are volts between them. */
    boolean joined(String one, String other) {
        return wiring.joined(wiring.node(one), wiring.node(other));
    }

    /** The current of a branch, positive from its {@code from} to its {@code to}. */
    public double branchAmperes(String id) {
        return branchAmperes(wiring.branch(id));
    }

    /** The current of a source, positive when it gives. */
    public double sourceAmperes(String id) {
        return sourceAmperes(wiring.source(id));
    }

    /** The condition a source is in. */
    Condition condition(String sourceId) {
        return condition(wiring.source(sourceId));
    }

    /** The current of a load, positive into its positive terminal; 0 if nothing feeds it. */
    public double loadAmperes(String id) {
        return loadAmperes(wiring.load(id));
    }

    /** The volts across a load; 0 if nothing feeds it. */
    public double loadVolts(String id) {
        return loadVolts(wiring.load(id));
    }

    /** The loads whose volts lie below their cut-off, sorted by id, those that nothing feeds among them. */
    public List<String> belowCutOff() {
        return belowCutOff;
    }

    /**
     * The loads that nothing feeds, sorted by id: no source joins both their terminals through branches. A load does
     * not count as a path to another load.
     */
    public List<String> unfed() {
        List<String> unfed = new ArrayList<>();
        for (int l = 0; l < network.loads().size(); l++) {
            if (!wiring.fed(l)) {
                unfed.add(network.loads().get(l).id());
            }
        }
        return unfed;
    }

    double localVolts(int node) {
        return localVolts[node];
    }

    double voltsAcross(int positive, int negative) {
        double local = localVolts[positive] - localVolts[negative];
        int one = wiring.root(positive);
        int other = wiring.root(negative);
        return one == other ? local : values.rootVolts[one] - values.rootVolts[other] + local;
    }

    double branchAmperes(int branch) {
        return (localVolts[wiring.from(branch)] - localVolts[wiring.to(branch)])
                / network.branches().get(branch).ohms();
    }

    double sourceAmperes(int source) {
        return values.sourceAmperes[source];
    }

    Condition condition(int source) {
        return values.conditions[source];
    }

    double loadAmperes(int load) {
        if (!wiring.fed(load)) {
            return 0;
        }
        Load element = network.loads().get(load);
        if (element instanceof Load.ConstantCurrent current) {
            return current.amperes();
        }
        if (element instanceof Load.Resistive resistive) {
            return loadVolts(load) / resistive.ohms();
        }
        double watts = ((Load.ConstantPower) element).watts();
        return watts == 0 ? 0 : watts / loadVolts(load);
    }

    double loadVolts(int load) {
        return wiring.fed(load)
                ? voltsAcross(wiring.loads().positive()[load], wiring.loads().negative()[load])
                : 0;
    }
}
