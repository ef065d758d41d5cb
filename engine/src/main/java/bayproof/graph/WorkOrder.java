package bayproof.graph;

import bayproof.read.Plan;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.EdgeReversedGraph;
import org.jgrapht.traverse.BreadthFirstIterator;

/** The order of work: a vertex for each step, an edge from each step to every step that says it comes after it. */
public final class WorkOrder {
    private final Map<String, Plan.Step> steps;
    private final Graph<String, DefaultEdge> graph = new DefaultDirectedGraph<>(DefaultEdge.class);
    private final Map<String, Set<String>> earlier = new HashMap<>();

    public WorkOrder(Map<String, Plan.Step> steps) {
        this.steps = steps;
        // By name, so that the order of the file changes nothing.
        new TreeSet<>(steps.keySet()).forEach(graph::addVertex);
        for (String id : graph.vertexSet()) {
            for (String before : new TreeSet<>(steps.get(id).after().orElse(List.of()))) {
                if (!before.equals(id) && steps.containsKey(before)) {
                    graph.addEdge(before, id);
                }
            }
        }
    }

    /**
     * Whether the plan puts one step before another. Nothing that puts it there is false; a step on the way that does not
     * say what it comes after leaves it missing, and so does a loop.
     */
    public Shown<Boolean> before(Plan.Step one, Plan.Step other) {
        if (earlierThan(other.id()).contains(one.id())) {
            return earlierThan(one.id()).contains(other.id())
                    ? Shown.missing(new Need(other.path() + ".after", "an order in which " + one.id() + " and " + other.id()
                    + " do not wait for each other", other.after().atOr(other.at()))) : Shown.of(true);
        }
        List<Need> open = new ArrayList<>(other.after().needs());
        earlierThan(other.id()).forEach(id -> open.addAll(steps.get(id).after().needs()));
        return open.isEmpty() ? Shown.of(false) : Shown.missing(open);
    }

    /** The steps of a loop in their order, its first one repeated at the end; an empty list where the steps form none. */
    public Shown<List<String>> loop() {
        for (Plan.Step step : steps.values()) {
            if (step.after().orElse(List.of()).contains(step.id())) {
                return Shown.of(List.of(step.id(), step.id()));
            }
        }
        Set<String> looped = new TreeSet<>(new CycleDetector<>(graph).findCycles());
        if (!looped.isEmpty()) {
            return Shown.of(shortestLoop(looped));
        }
        List<Need> open = new ArrayList<>();
        steps.values().forEach(step -> open.addAll(step.after().needs()));
        return open.isEmpty() ? Shown.of(List.of()) : Shown.missing(open);
    }

    private List<String> shortestLoop(Set<String> looped) {
        List<String> shortest = null;
        for (String start : looped) {
            for (DefaultEdge edge : graph.outgoingEdgesOf(start)) {
                var back = BFSShortestPath.findPathBetween(graph, graph.getEdgeTarget(edge), start);
                if (back != null && (shortest == null || back.getLength() + 2 < shortest.size())) {
                    shortest = new ArrayList<>(List.of(start));
                    shortest.addAll(back.getVertexList());
                }
            }
        }
        return shortest;
    }

    private Set<String> earlierThan(String id) {
        return earlier.computeIfAbsent(id, step -> {
            Set<String> all = new LinkedHashSet<>();
            new BreadthFirstIterator<>(new EdgeReversedGraph<>(graph), step).forEachRemaining(all::add);
            all.remove(step);
            return all;
        });
    }
}
