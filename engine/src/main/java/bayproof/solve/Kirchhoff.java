package bayproof.solve;

/**
 * Kirchhoff's current law at every node of an operating point, with each current taken from the law of its element at
 * the volts found: a check of the whole solution that shares no step with the way it was found.
 */
final class Kirchhoff {
    private static final double RELATIVE = 1e-9;
    /** Rounding of volts, in units of their last place: volts are sums of a few dozen terms. */
    private static final double ROUNDING = 64 * Math.ulp(1.0);

    private Kirchhoff() {
    }

    /**
     * Checks each node: its currents sum to 0 within 1e-9 of the sum of their magnitudes, plus what the rounding of its
     * volts makes through its conductances.
     *
     * @throws IllegalStateException if they do not, naming the node
     */
    static void check(Network network, OperatingPoint point) {
        Wiring wiring = network.wiring();
        int count = network.nodes().size();
        Sums sums = new Sums(new double[count], new double[count]);
        for (int b = 0; b < network.branches().size(); b++) {
            double ohms = network.branches().get(b).ohms();
            int from = wiring.from(b);
            int to = wiring.to(b);
            double volts = Math.max(Math.abs(point.localVolts(from)), Math.abs(point.localVolts(to)));
            sums.add(from, to, point.branchAmperes(b), volts / ohms);
        }
        for (int l = 0; l < network.loads().size(); l++) {
            sums.add(wiring.loads().positive()[l], wiring.loads().negative()[l], point.loadAmperes(l), 0);
        }
        for (int s = 0; s < network.sources().size(); s++) {
            int positive = wiring.sources().positive()[s];
            int negative = wiring.sources().negative()[s];
            double given = point.sourceAmperes(s);
            double steep = 0;
            if (network.sources().get(s) instanceof Source.Battery battery && point.condition(s) == Condition.GIVING) {
                given = (battery.restVolts() - point.voltsAcross(positive, negative)) / battery.internalOhms();
                steep = battery.restVolts() / battery.internalOhms();
            }
            sums.add(negative, positive, given, steep);
        }
        for (int node = 0; node < count; node++) {
            if (!(Math.abs(sums.amperes[node]) <= sums.allowed[node])) {
                throw new IllegalStateException("Kirchhoff's law fails at node " + network.nodes().get(node) + ": "
                        + sums.amperes[node] + " A left over, allowed " + sums.allowed[node]);
            }
        }
    }

    /** The current out of each node, and how far it may be from 0. */
    private record Sums(double[] amperes, double[] allowed) {
        void add(int from, int to, double current, double steep) {
            amperes[from] += current;
            amperes[to] -= current;
            double slack = RELATIVE * Math.abs(current) + ROUNDING * steep;
            allowed[from] += slack;
            allowed[to] += slack;
        }
    }
}
