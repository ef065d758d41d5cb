package bayproof.solve;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The sources and loads of one island as its elements, sources first, and what its branches make between those of them
 * whose current depends on their volts: the reacting elements, that is all sources and the loads that do not hold their
 * current. {@code dropOhms[e][f]} is the volts lost across reacting element e for each ampere that reacting element f takes.
 */
final class Island {
    private final Elimination elimination;
    private final int nodes;
    private final int[] sources;
    private final int[] loads;
    private final int[] roots;
    private final int[] positiveNode;
    private final int[] negativeNode;
    private final int[] positivePiece;
    private final int[] negativePiece;
    private final int[] reacting;
    private final double[][] dropOhms;

    /**
     * @param steady whether each load of the network holds its current
     */
    Island(Wiring wiring, int[] sources, int[] loads, int[] roots, boolean[] steady) {
        this.elimination = wiring.elimination();
        this.nodes = wiring.nodes().size();
        this.sources = sources;
        this.loads = loads;
        this.roots = roots;
        int count = sources.length + loads.length;
        positiveNode = new int[count];
        negativeNode = new int[count];
        for (int e = 0; e < count; e++) {
            Wiring.Terminals terminals = e < sources.length ? wiring.sources() : wiring.loads();
            int at = e < sources.length ? sources[e] : loads[e - sources.length];
            positiveNode[e] = terminals.positive()[at];
            negativeNode[e] = terminals.negative()[at];
        }
        positivePiece = Arrays.stream(positiveNode).map(node -> piece(wiring.root(node))).toArray();
        negativePiece = Arrays.stream(negativeNode).map(node -> piece(wiring.root(node))).toArray();
        reacting = IntStream.range(0, count).filter(e -> e < sources.length || !steady[loads[e - sources.length]]).toArray();
        dropOhms = new double[reacting.length][reacting.length];
        double[] taken = new double[count];
        for (int f = 0; f < reacting.length; f++) {
            taken[reacting[f]] = 1;
            double[] volts = localVolts(taken);
            taken[reacting[f]] = 0;
            for (int e = 0; e < reacting.length; e++) {
                dropOhms[e][f] = -across(volts, reacting[e]);
            }
        }
    }

    /** The volts of every node against the root of its piece while each element takes a current. */
    double[] localVolts(double[] takenAmperes) {
        double[] injected = new double[nodes];
        for (int e = 0; e < takenAmperes.length; e++) {
            injected[positiveNode[e]] -= takenAmperes[e];
            injected[negativeNode[e]] += takenAmperes[e];
        }
        return elimination.volts(injected);
    }

    /** The volts across an element, the volts between the roots of its pieces apart. */
    double across(double[] localVolts, int element) {
        return localVolts[positiveNode[element]] - localVolts[negativeNode[element]];
    }

    private int piece(int root) {
        return Arrays.binarySearch(roots, root);
    }

    /** All elements. */
    int count() {
        return positiveNode.length;
    }

    /** The elements whose current depends on their volts, ascending: every source stands at its own number. */
    int[] reacting() {
        return reacting;
    }

    int[] sources() {
        return sources;
    }

    int[] loads() {
        return loads;
    }

    /** The roots of its pieces, ascending. */
    int[] roots() {
        return roots;
    }

    int positiveNode(int element) {
        return positiveNode[element];
    }

    int negativeNode(int element) {
        return negativeNode[element];
    }

    int positivePiece(int element) {
        return positivePiece[element];
    }

    int negativePiece(int element) {
        return negativePiece[element];
    }

    /** By the places of both in {@link #reacting()}. */
    double dropOhms(int element, int taker) {
        return dropOhms[element][taker];
    }
}
