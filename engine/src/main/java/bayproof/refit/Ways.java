package bayproof.refit;

import bayproof.read.Job;
import bayproof.read.Vehicle;
import java.util.ArrayList;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.WeightedMultigraph;

/** Ways along the routes of a vehicle sheet: a vertex for each place and pass-through, an edge for each route. */
final class Ways {
    /**
     * A way.
     *
     * @param routes   its routes in order
     * @param holes    the pass-throughs it leads through, in order
     * @param measured whether every route of it has a length
     */
    record Way(List<String> routes, List<String> holes, boolean measured) {
        Way {
            routes = List.copyOf(routes);
            holes = List.copyOf(holes);
        }
    }

    /** An edge of its own for each route, since two routes may join the same two points. */
    private record Edge(String route) {
    }

    private final Job job;
    private final Graph<String, Edge> measured = new WeightedMultigraph<>(Edge.class);
    private final Graph<String, Edge> all = new WeightedMultigraph<>(Edge.class);

    Ways(Job job) {
        this.job = job;
        for (Vehicle.Route route : job.vehicle().routes().values()) {
            List<String> ends = route.between().orElse(List.of());
            if (ends.size() == 2 && !ends.get(0).equals(ends.get(1))) {
                add(all, route, ends, 1);
                if (route.lengthMetres().isGiven()) {
                    add(measured, route, ends, route.lengthMetres().orElse(0.0));
                }
            }
        }
    }

    private static void add(Graph<String, Edge> graph, Vehicle.Route route, List<String> ends, double weight) {
        Edge edge = new Edge(route.id());
        ends.forEach(graph::addVertex);
        graph.addEdge(ends.get(0), ends.get(1), edge);
        graph.setEdgeWeight(edge, weight);
    }

    /** The shortest measured way, else the one with the fewest routes; null where no routes lead there. */
    Way between(String from, String to) {
        Way way = way(measured, from, to, true);
        return way != null ? way : way(all, from, to, false);
    }

    /** Length of the shortest measured way; infinite where none leads there, 0 within one place. */
    double metres(String from, String to) {
        if (from.equals(to)) {
            return 0;
        }
        boolean known = measured.containsVertex(from) && measured.containsVertex(to);
        GraphPath<String, Edge> path = known ? new DijkstraShortestPath<>(measured).getPath(from, to) : null;
        return path == null ? Double.POSITIVE_INFINITY : path.getWeight();
    }

    private Way way(Graph<String, Edge> graph, String from, String to, boolean isMeasured) {
        if (!graph.containsVertex(from) || !graph.containsVertex(to)) {
            return null;
        }
        GraphPath<String, Edge> path = new DijkstraShortestPath<>(graph).getPath(from, to);
        return path == null ? null : new Way(path.getEdgeList().stream().map(Edge::route).toList(),
                path.getVertexList().stream().filter(job.passThroughs()::containsKey).toList(), isMeasured);
    }

    /** A way along chosen routes. */
    Way along(List<String> routes) {
        List<String> holes = new ArrayList<>();
        boolean lengths = true;
        for (String id : routes) {
            Vehicle.Route route = job.vehicle().routes().get(id);
            lengths &= route.lengthMetres().isGiven();
            route.between().orElse(List.of()).stream().filter(end -> job.passThroughs().containsKey(end) && !holes.contains(end)).forEach(holes::add);
        }
        return new Way(routes, holes, lengths);
    }
}
