package bayproof.solve;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Finds the highest-voltage operating point of one island.
 *
 * <p>Source conditions are tried in lexical order, the condition with the higher volts first. A source gives less and a
 * load draws less the higher its volts are, so of all consistent choices the one with the highest volts has for every
 * source the highest condition; lexical order meets it before any other.
 *
 * <p>Loads that hold their current ask no question: what they make across the others is worked out once. The equations
 * are those of sources and of the loads whose current depends on their volts.
 *
 * <p>With the conditions fixed only the constant-power loads are not linear. Newton's method starts from the volts
 * without them, which no solution exceeds. P / V is convex and falling, so each step goes down and stays above the
 * highest solution until it meets it; volts that fall to 0, or that all rise, show that there is none.
 *
 * <p>Both arguments need that a current drawn at one load lowers the volts of every other. Sources on grounds of their
 * own can reverse that a little; for them the outside comparison and the property tests stand in for a proof.
 */
final class IslandSolver {
    /** A double root, at maximum power transfer, halves the distance each step: 2^-60 is beyond double precision. */
    private static final int MOST_STEPS = 60;
    /** The power of the last step is wrong by the square of its relative change. */
    private static final double SETTLED = 1e-9;
    private final Island island;
    private final Source[] sources;
    /** The loads among the reacting elements. */
    private final Load[] loads;
    /** The reacting elements; the currents of all others are known. */
    private final int count;
    /** Taken by each element that holds its current; 0 for the reacting ones. */
    private final double[] steadyAmperes;
    /** What the held currents alone make across each reacting element, and bring out of each piece. */
    private final double[] steadyVolts;
    private final double[] steadyOut;
    private final int[] positivePiece;
    private final int[] negativePiece;
    private final DMatrixRMaj matrix;
    private final DMatrixRMaj right;
    private final DMatrixRMaj unknown;
    private final LinearSolverDense<DMatrixRMaj> linear;
    private final double[] volts;

    /**
     * One island at rest.
     *
     * @param conditions   of each source
     * @param takenAmperes of each element of the island, sources first; negative for what a source gives
     * @param rootVolts    of the root of each piece against the root of the first
     */
    record Settled(Condition[] conditions, double[] takenAmperes, double[] rootVolts) {
    }

    IslandSolver(Network network, Island island) {
        this.island = island;
        sources = Arrays.stream(island.sources()).mapToObj(network.sources()::get).toArray(Source[]::new);
        int[] reacting = island.reacting();
        count = reacting.length;
        loads = Arrays.stream(reacting, sources.length, count)
                .mapToObj(e -> network.loads().get(island.loads()[e - sources.length])).toArray(Load[]::new);
        steadyAmperes = new double[island.count()];
        steadyOut = new double[island.roots().length];
        for (int l = 0; l < island.loads().length; l++) {
            if (network.loads().get(island.loads()[l]) instanceof Load.ConstantCurrent current) {
                int e = sources.length + l;
                steadyAmperes[e] = current.amperes();
                steadyOut[island.positivePiece(e)] += current.amperes();
                steadyOut[island.negativePiece(e)] -= current.amperes();
            }
        }
        double[] local = island.localVolts(steadyAmperes);
        steadyVolts = Arrays.stream(reacting).mapToDouble(e -> island.across(local, e)).toArray();
        positivePiece = Arrays.stream(reacting).map(island::positivePiece).toArray();
        negativePiece = Arrays.stream(reacting).map(island::negativePiece).toArray();
        int size = count + island.roots().length - 1;
        matrix = new DMatrixRMaj(size, size);
        right = new DMatrixRMaj(size, 1);
        unknown = new DMatrixRMaj(size, 1);
        linear = LinearSolverFactory_DDRM.linear(size);
        volts = new double[count];
    }

    /** The operating point with the highest volts, or null if there is none. */
    Settled highest() {
        int[] choice = new int[sources.length];
        Condition[] conditions = new Condition[sources.length];
        do {
            Arrays.setAll(conditions, s -> sources[s].conditions().get(choice[s]));
            if (isDetermined(conditions) && settles(conditions)) {
                Settled settled = settled(conditions);
                if (isConsistent(settled)) {
                    return settled;
                }
            }
        } while (next(choice));
        return null;
    }

    private Settled settled(Condition[] conditions) {
        double[] taken = steadyAmperes.clone();
        for (int e = 0; e < count; e++) {
            taken[island.reacting()[e]] = unknown.data[e];
        }
        double[] rootVolts = new double[island.roots().length];
        System.arraycopy(unknown.data, count, rootVolts, 1, rootVolts.length - 1);
        return new Settled(conditions, taken, rootVolts);
    }

    private boolean next(int[] choice) {
        for (int s = choice.length - 1; s >= 0; s--) {
            if (++choice[s] < sources[s].conditions().size()) {
                return true;
            }
            choice[s] = 0;
        }
        return false;
    }

    /**
     * Whether the linear part has exactly one solution: what holds volts must tie all pieces together, without a loop
     * of held volts. A choice that leaves volts to the constant-power loads alone is never the highest: above such a
     * point the loads draw less than the sources give. A loop of held volts has no solution, or its ends are found with
     * another choice.
     */
    private boolean isDetermined(Condition[] conditions) {
        Groups pieces = new Groups(island.roots().length);
        int[] ends = new int[2 * sources.length];
        int held = 0;
        for (int e = 0; e < count; e++) {
            boolean source = e < sources.length;
            boolean holds = source && (conditions[e] == Condition.AT_REST_VOLTS
                    || conditions[e] == Condition.HOLDING_SET_POINT);
            if (holds) {
                ends[held++] = island.positiveNode(e);
                ends[held++] = island.negativeNode(e);
            }
            if (holds || source && conditions[e] == Condition.GIVING
                    || !source && loads[e - sources.length] instanceof Load.Resistive) {
                pieces.join(positivePiece[e], negativePiece[e]);
            }
        }
        return pieces.areOne() && !hasLoop(Arrays.copyOf(ends, held));
    }

    private static boolean hasLoop(int[] ends) {
        int[] nodes = Arrays.stream(ends).sorted().distinct().toArray();
        Groups tied = new Groups(nodes.length);
        for (int i = 0; i < ends.length; i += 2) {
            if (!tied.join(Arrays.binarySearch(nodes, ends[i]), Arrays.binarySearch(nodes, ends[i + 1]))) {
                return true;
            }
        }
        return false;
    }

    /** Solves with the conditions fixed; false if the constant-power loads find no volts they can live on. */
    private boolean settles(Condition[] conditions) {
        matrix.zero();
        right.zero();
        for (int s = 0; s < sources.length; s++) {
            characteristic(s, conditions[s]);
        }
        for (int l = 0; l < loads.length; l++) {
            int e = sources.length + l;
            if (loads[l] instanceof Load.Resistive resistive) {
                row(e, 1, -resistive.ohms(), 0);
            } else {
                row(e, 0, 1, 0);
            }
        }
        // The currents out of each piece but the first sum to 0; the first follows from the others.
        for (int piece = 1; piece < steadyOut.length; piece++) {
            right.data[count + piece - 1] = -steadyOut[piece];
        }
        for (int e = 0; e < count; e++) {
            if (positivePiece[e] > 0) {
                matrix.add(count + positivePiece[e] - 1, e, 1);
            }
            if (negativePiece[e] > 0) {
                matrix.add(count + negativePiece[e] - 1, e, -1);
            }
        }
        if (!solveLinear() || isOutOfReach(conditions)) {
            return false;
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            boolean powered = false;
            for (int l = 0; l < loads.length; l++) {
                if (loads[l] instanceof Load.ConstantPower power && power.watts() > 0) {
                    int e = sources.length + l;
                    if (!(volts[e] > 0)) {
                        return false;
                    }
                    // The tangent of P / V at the last volts.
                    row(e, power.watts() / (volts[e] * volts[e]), 1, 2 * power.watts() / volts[e]);
                    powered = true;
                }
            }
            if (!powered) {
                return true;
            }
            double[] last = volts.clone();
            if (!solveLinear() || isOutOfReach(conditions)) {
                return false;
            }
            double change = 0;
            boolean allRise = true;
            for (int l = 0; l < loads.length; l++) {
                if (loads[l] instanceof Load.ConstantPower power && power.watts() > 0) {
                    int e = sources.length + l;
                    double relative = volts[e] / last[e] - 1;
                    change = Math.max(change, Math.abs(relative));
                    allRise &= relative > SETTLED;
                }
            }
            if (change <= SETTLED) {
                return true;
            }
            if (allRise) {
                return false;
            }
        }
        return false;
    }

    private boolean isOutOfReach(Condition[] conditions) {
        return IntStream.range(0, sources.length).anyMatch(s -> Conditions.isOutOfReach(sources[s], conditions[s], volts[s]));
    }

    private void characteristic(int s, Condition condition) {
        if (sources[s] instanceof Source.Battery battery) {
            switch (condition) {
                case TAKING_ACCEPTANCE -> row(s, 0, 1, battery.acceptanceAmperes());
                case AT_REST_VOLTS -> row(s, 1, 0, battery.restVolts());
                default -> row(s, 1, -battery.internalOhms(), battery.restVolts());
            }
        } else if (sources[s] instanceof Source.Regulated regulated) {
            switch (condition) {
                case STANDING_BY -> row(s, 0, 1, 0);
                case HOLDING_SET_POINT -> row(s, 1, 0, regulated.setVolts());
                default -> row(s, 0, 1, -regulated.limitAmperes());
            }
        }
    }

    /** Sets voltsFactor x volts + amperesFactor x taken amperes = value for one element. */
    private void row(int e, double voltsFactor, double amperesFactor, double value) {
        int at = e * matrix.numCols;
        double[] data = matrix.data;
        for (int f = 0; f < count; f++) {
            data[at + f] = -voltsFactor * island.dropOhms(e, f);
        }
        data[at + e] += amperesFactor;
        Arrays.fill(data, at + count, at + matrix.numCols, 0);
        if (positivePiece[e] > 0) {
            data[at + count + positivePiece[e] - 1] += voltsFactor;
        }
        if (negativePiece[e] > 0) {
            data[at + count + negativePiece[e] - 1] -= voltsFactor;
        }
        right.data[e] = value - voltsFactor * steadyVolts[e];
    }

    private boolean solveLinear() {
        if (!linear.setA(matrix)) {
            return false;
        }
        linear.solve(right, unknown);
        double[] found = unknown.data;
        for (int e = 0; e < count; e++) {
            double sum = steadyVolts[e];
            for (int f = 0; f < count; f++) {
                sum -= island.dropOhms(e, f) * found[f];
            }
            if (positivePiece[e] > 0) {
                sum += found[count + positivePiece[e] - 1];
            }
            if (negativePiece[e] > 0) {
                sum -= found[count + negativePiece[e] - 1];
            }
            if (!Double.isFinite(sum)) {
                return false;
            }
            volts[e] = sum;
        }
        return true;
    }

    private boolean isConsistent(Settled settled) {
        double[] taken = settled.takenAmperes();
        double most = 0;
        for (double amperes : taken) {
            most = Math.max(most, Math.abs(amperes));
        }
        double slackAmperes = Conditions.SLACK * most;
        for (int s = 0; s < sources.length; s++) {
            if (!Conditions.isConsistent(sources[s], settled.conditions()[s], volts[s], taken[s], slackAmperes)) {
                return false;
            }
        }
        // A load cannot push its current against the volts across it.
        double[] local = island.localVolts(taken);
        for (int e = sources.length; e < taken.length; e++) {
            if (steadyAmperes[e] > 0 && settled.rootVolts()[island.positivePiece(e)] - settled.rootVolts()[island.negativePiece(e)]
                    + island.across(local, e) < 0) {
                return false;
            }
        }
        return true;
    }
}
