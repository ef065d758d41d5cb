package bayproof.solve;

/**
 * The laws an operating point must obey, checked on the volts and currents found: Kirchhoff's current law at every
 * node, and the volts of every source that holds or sags. Branches and loads take part with the current their own law
 * gives at their volts, so no step of the way to the solution is trusted.
 */
final class Kirchhoff {
    private static final double RELATIVE = 1e-9;
    /** Currents of this size are the rounding of 12 V across a few ohms; no item draws so little. */
    private static final double NOTHING_AMPERES = 1e-12;
    /** Relative rounding of volts and currents: they are sums of a few dozen terms. */
    private static final double ROUNDING = 64 * Math.ulp(1.0);

    private final Network network;
    private final OperatingPoint point;
    private final double[] left;
    private final double[] allowed;
    private double largest;

    private Kirchhoff(Network network, OperatingPoint point) {
        this.network = network;
        this.point = point;
        left = new double[network.nodes().size()];
        allowed = new double[left.length];
    }

    /**
     * Checks the currents of each node: they sum to 0 within 1e-9 of the sum of their magnitudes, plus what the
     * rounding of its volts makes through its conductances, plus the rounding of the largest current of the network and
     * 1e-12 A. Checks the volts of each source within 1e-9.
     *
     * @throws IllegalStateException if a law fails, naming the node or the source
     */
    static void check(Network network, OperatingPoint point) {
        Kirchhoff kirchhoff = new Kirchhoff(network, point);
        kirchhoff.branches();
        kirchhoff.loads();
        kirchhoff.sources();
        kirchhoff.nodes();
    }

    private void branches() {
        for (int b = 0; b < network.branches().size(); b++) {
            int from = network.wiring().from(b);
            int to = network.wiring().to(b);
            double amperes = point.branchAmperes(b);
            flow(from, to, amperes);
            double rounding = ROUNDING * Math.max(Math.abs(point.localVolts(from)), Math.abs(point.localVolts(to)))
                    / network.branches().get(b).ohms();
            allowed[from] += rounding;
            allowed[to] += rounding;
        }
    }

    private void loads() {
        Wiring.Terminals terminals = network.wiring().loads();
        for (int l = 0; l < network.loads().size(); l++) {
            flow(terminals.positive()[l], terminals.negative()[l], point.loadAmperes(l));
        }
    }

    private void sources() {
        Wiring.Terminals terminals = network.wiring().sources();
        for (int s = 0; s < network.sources().size(); s++) {
            int positive = terminals.positive()[s];
            int negative = terminals.negative()[s];
            double given = point.sourceAmperes(s);
            flow(negative, positive, given);
            double volts = point.voltsAcross(positive, negative);
            double lawful = volts;
            Condition condition = point.condition(s);
            if (network.sources().get(s) instanceof Source.Battery battery) {
                if (condition == Condition.AT_REST_VOLTS) {
                    lawful = battery.restVolts();
                } else if (condition == Condition.GIVING) {
                    lawful = battery.restVolts() - battery.internalOhms() * given;
                }
            } else if (network.sources().get(s) instanceof Source.Regulated regulated
                    && condition == Condition.HOLDING_SET_POINT) {
                lawful = regulated.setVolts();
            }
            if (!(Math.abs(volts - lawful) <= RELATIVE * Math.max(volts, lawful))) {
                throw new IllegalStateException("source " + network.sources().get(s).id() + " has " + volts
                        + " V, its law gives " + lawful + " V");
            }
        }
    }

    private void flow(int from, int to, double amperes) {
        largest = Math.max(largest, Math.abs(amperes));
        left[from] += amperes;
        left[to] -= amperes;
        allowed[from] += RELATIVE * Math.abs(amperes);
        allowed[to] += RELATIVE * Math.abs(amperes);
    }

    private void nodes() {
        for (int node = 0; node < left.length; node++) {
            double most = allowed[node] + ROUNDING * largest + NOTHING_AMPERES;
            if (!(Math.abs(left[node]) <= most)) {
                throw new IllegalStateException("Kirchhoff's law fails at node " + network.nodes().get(node) + ": "
                        + left[node] + " A left over, allowed " + most + " A");
            }
        }
    }
}
