package bayproof.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The branches of a network, eliminated node by node down to the kept nodes (star-mesh transform, the node with the
 * fewest neighbors first: wiring is nearly a tree, so the work grows about as the number of nodes). Only sums, products
 * and quotients of positive numbers occur, so widely different resistances cost no digits.
 */
final class Elimination {
    private final int[] order;
    private final int[][] neighbors;
    private final double[][] shares;
    private final double[] siemens;

    /**
     * Eliminates every node that is not kept.
     *
     * @param from    first node of each branch
     * @param to      second node of each branch
     * @param siemens conductance of each branch
     * @param kept    which nodes stay, at least one of each connected part
     */
    Elimination(int[] from, int[] to, double[] siemens, boolean[] kept) {
        int count = kept.length;
        Mesh mesh = new Mesh(count);
        for (int i = 0; i < from.length; i++) {
            mesh.add(from[i], to[i], siemens[i]);
        }
        int steps = 0;
        for (boolean keep : kept) {
            steps += keep ? 0 : 1;
        }
        order = new int[steps];
        neighbors = new int[steps][];
        shares = new double[steps][];
        this.siemens = new double[steps];
        Queue queue = new Queue(mesh, kept);
        for (int step = 0; step < steps; step++) {
            int node = queue.next();
            order[step] = node;
            neighbors[step] = Arrays.copyOf(mesh.neighbors[node], mesh.degree[node]);
            shares[step] = Arrays.copyOf(mesh.siemens[node], mesh.degree[node]);
            for (double conductance : shares[step]) {
                this.siemens[step] += conductance;
            }
            for (int i = 0; i < shares[step].length; i++) {
                shares[step][i] /= this.siemens[step];
            }
            mesh.remove(node, shares[step]);
            for (int neighbor : neighbors[step]) {
                queue.changed(neighbor);
            }
        }
    }

    /**
     * The volts of every node while the kept nodes are held at 0 V.
     *
     * @param injectedAmperes the current fed into each node, A
     */
    double[] volts(double[] injectedAmperes) {
        double[] values = injectedAmperes.clone();
        for (int step = 0; step < order.length; step++) {
            double injected = values[order[step]];
            if (injected != 0) {
                for (int i = 0; i < neighbors[step].length; i++) {
                    values[neighbors[step][i]] += shares[step][i] * injected;
                }
            }
        }
        double[] volts = new double[values.length];
        for (int step = order.length - 1; step >= 0; step--) {
            double sum = values[order[step]] / siemens[step];
            for (int i = 0; i < neighbors[step].length; i++) {
                sum += shares[step][i] * volts[neighbors[step][i]];
            }
            volts[order[step]] = sum;
        }
        return volts;
    }

    /** What is left while nodes are taken out: for each node its neighbors and the conductance to each. */
    private static final class Mesh {
        final int[][] neighbors;
        final double[][] siemens;
        final int[] degree;

        Mesh(int count) {
            neighbors = new int[count][4];
            siemens = new double[count][4];
            degree = new int[count];
        }

        void add(int one, int other, double conductance) {
            addTo(one, other, conductance);
            addTo(other, one, conductance);
        }

        void remove(int node, double[] shares) {
            int count = degree[node];
            for (int i = 0; i < count; i++) {
                drop(neighbors[node][i], node);
            }
            for (int i = 0; i < count; i++) {
                for (int j = i + 1; j < count; j++) {
                    add(neighbors[node][i], neighbors[node][j], shares[i] * siemens[node][j]);
                }
            }
            degree[node] = 0;
        }

        private void addTo(int node, int neighbor, double conductance) {
            for (int i = 0; i < degree[node]; i++) {
                if (neighbors[node][i] == neighbor) {
                    siemens[node][i] += conductance;
                    return;
                }
            }
            if (degree[node] == neighbors[node].length) {
                neighbors[node] = Arrays.copyOf(neighbors[node], 2 * degree[node]);
                siemens[node] = Arrays.copyOf(siemens[node], 2 * degree[node]);
            }
            neighbors[node][degree[node]] = neighbor;
            siemens[node][degree[node]++] = conductance;
        }

        private void drop(int node, int neighbor) {
            int last = --degree[node];
            for (int i = 0; i <= last; i++) {
                if (neighbors[node][i] == neighbor) {
                    neighbors[node][i] = neighbors[node][last];
                    siemens[node][i] = siemens[node][last];
                    return;
                }
            }
        }
    }

    /** The nodes still to be taken out, those with the fewest neighbors first, of these the first. */
    private static final class Queue {
        private final Mesh mesh;
        /** By number of neighbors. */
        private final List<BitSet> waiting = new ArrayList<>();
        /** The number of neighbors under which each node waits; -1 for one that does not wait. */
        private final int[] under;

        Queue(Mesh mesh, boolean[] kept) {
            this.mesh = mesh;
            this.under = new int[kept.length];
            for (int node = 0; node < kept.length; node++) {
                under[node] = kept[node] ? -1 : mesh.degree[node];
                put(node);
            }
        }

        int next() {
            for (BitSet group : waiting) {
                int node = group.nextSetBit(0);
                if (node >= 0) {
                    group.clear(node);
                    under[node] = -1;
                    return node;
                }
            }
            throw new IllegalStateException("no node is left");
        }

        void changed(int node) {
            if (under[node] >= 0) {
                waiting.get(under[node]).clear(node);
                under[node] = mesh.degree[node];
                put(node);
            }
        }

        private void put(int node) {
            if (under[node] >= 0) {
                while (waiting.size() <= under[node]) {
                    waiting.add(new BitSet(under.length));
                }
                waiting.get(under[node]).set(node);
            }
        }
    }
}
