package bayproof.solve;

import java.util.Arrays;

/**
 * The sources and loads of one island as its elements, sources first, and what its branches make between them.
 * {@code dropOhms[e][f]} is the volts lost across element e for each ampere that element f takes.
 */
final class Island {
    private final int[] sources;
    private final int[] loads;
    private final int[] roots;
    private final int[] positiveNode;
    private final int[] negativeNode;
    private final int[] positivePiece;
    private final int[] negativePiece;
    private final double[][] dropOhms;

    Island(Wiring wiring, int[] sources, int[] loads, int[] roots) {
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
        dropOhms = new double[count][count];
        double[] injected = new double[wiring.nodes().size()];
        for (int f = 0; f < count; f++) {
            injected[positiveNode[f]] = 1;
            injected[negativeNode[f]] = -1;
            double[] volts = wiring.elimination().volts(injected);
            injected[positiveNode[f]] = 0;
            injected[negativeNode[f]] = 0;
            for (int e = 0; e < count; e++) {
                dropOhms[e][f] = volts[positiveNode[e]] - volts[negativeNode[e]];
            }
        }
    }

    private int piece(int root) {
        return Arrays.binarySearch(roots, root);
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

    double dropOhms(int element, int taker) {
        return dropOhms[element][taker];
    }
}
