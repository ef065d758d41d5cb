package bayproof.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.QueueBFSFundamentalCycleBasis;
import org.jgrapht.graph.Pseudograph;

/**
 * Metal that joins the equipment of an audio chain besides its signal conductors: every item hangs on the ground, and
 * a shield that is grounded at both ends joins two items. Each edge is named by the run or item it stands for.
 */
public final class ShieldGraph {
    /** All ground points together: the body joins them. */
    private static final String GROUND = "ground";

    /** An edge with identity: two shields between the same items are two. */
    private record Join(int number, String name) {
    }

    private final Graph<String, Join> graph = new Pseudograph<>(Join.class);

    public ShieldGraph() {
        graph.addVertex(GROUND);
    }

    /** An item that returns to the ground; the way of its return does not matter here. */
    public void grounded(String item) {
        join(item, GROUND, item);
    }

    /** A shield grounded at both of its ends. */
    public void shield(String run, String one, String other) {
        join(one, other, run);
    }

    private void join(String one, String other, String name) {
        graph.addVertex(one);
        graph.addVertex(other);
        graph.addEdge(one, other, new Join(graph.edgeSet().size(), name));
    }

    /**
     * For each item that lies on a loop the names of the shortest one found, sorted. A vertex lies on some loop exactly
     * when it lies on one of a fundamental basis.
     */
    public Map<String, List<String>> loops() {
        Map<String, List<String>> shortest = new TreeMap<>();
        for (List<Join> cycle : new QueueBFSFundamentalCycleBasis<>(graph).getCycleBasis().getCycles()) {
            List<String> names = cycle.stream().map(Join::name).sorted().toList();
            for (Join join : cycle) {
                for (String end : List.of(graph.getEdgeSource(join), graph.getEdgeTarget(join))) {
                    if (!end.equals(GROUND) && (!shortest.containsKey(end) || names.size() < shortest.get(end).size())) {
                        shortest.put(end, new ArrayList<>(names));
                    }
                }
            }
        }
        return shortest;
    }
}
