package bayproof.graph;

import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Run;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.AsSubgraph;
import org.jgrapht.graph.WeightedPseudograph;

/**
 * The wiring of a job: a vertex for each terminal, an edge for each run, each way through a fuse or the contacts of a relay, and each way from a
 * ground point into the body. Parallel cables are edges of their own. A run with an end nobody gave ends at a vertex
 * of its own that starts with {@code ?}.
 */
public final class WiringGraph {
    /** The vehicle body, where returns meet. */
    public static final String BODY = "body";

    private final Graph<String, Link> graph = new WeightedPseudograph<>(Link.class);
    private final Map<String, Link> byRun = new HashMap<>();
    /** For each terminal the number of what conducting ways hold together. */
    private final Map<String, Integer> pieces = new HashMap<>();
    /** For each terminal what conductors alone hold together with it, every fuse out. */
    private final Map<String, Set<String>> nets = new HashMap<>();
    private final Job job;

    public WiringGraph(Job job) {
        this.job = job;
        graph.addVertex(BODY);
        job.items().values().forEach(this::addInside);
        job.runs().values().forEach(this::addRun);
        int piece = 0;
        for (Set<String> together : new ConnectivityInspector<>(graph).connectedSets()) {
            for (String terminal : together) {
                pieces.put(terminal, piece);
            }
            piece++;
        }
        Set<Link> conductors = graph.edgeSet().stream().filter(link -> link.kind() != Link.Kind.FUSE).collect(Collectors.toSet());
        for (Set<String> together : new ConnectivityInspector<>(new AsSubgraph<>(graph, null, conductors)).connectedSets()) {
            together.forEach(terminal -> nets.put(terminal, together));
        }
    }

    private void addInside(Item item) {
        if (item instanceof Item.Fuse fuse) {
            add(Link.ofFuse(fuse, fuse.id(), fuse.id() + ".in", fuse.id() + ".out", fuse.ratingAmperes()));
        } else if (item instanceof Item.FuseBlock block) {
            block.fuses().forEach((outlet, rating) ->
                    add(Link.ofFuse(block, block.id() + "." + outlet, block.id() + ".in", block.id() + "." + outlet, rating)));
        } else if (item instanceof Item.Relay relay) {
            add(Link.ofContacts(relay, relay.id() + ".30", relay.id() + ".87"));
        } else if (item instanceof Item.GroundPoint point) {
            add(Link.ofBody(point, point.id() + ".stud", BODY));
        }
    }

    private void addRun(Run run) {
        Link link = Link.ofRun(run, run.from().orElse("?" + run.id() + "-from"), run.to().orElse("?" + run.id() + "-to"));
        add(link);
        byRun.put(run.id(), link);
    }

    private void add(Link link) {
        graph.addVertex(link.from());
        graph.addVertex(link.to());
        if (!graph.addEdge(link.from(), link.to(), link)) {
            throw new IllegalStateException("the wiring graph refused " + link.id());
        }
    }

    /** Edges at a terminal, in the order of the files. */
    public List<Link> at(String terminal) {
        return graph.containsVertex(terminal) ? new ArrayList<>(graph.edgesOf(terminal)) : List.of();
    }

    public Link of(Run run) {
        return byRun.get(run.id());
    }

    public static boolean isOpen(String terminal) {
        return terminal.startsWith("?");
    }

    /** All edges in the order of the files. */
    public List<Link> links() {
        return new ArrayList<>(graph.edgeSet());
    }

    /** Whether a conducting way joins two terminals. */
    public boolean joins(String one, String other) {
        Integer piece = pieces.get(one);
        return piece != null && piece.equals(pieces.get(other));
    }

    /** Every terminal that conductors and the body join to this one, itself included, with every fuse out. */
    public Set<String> net(String terminal) {
        return nets.getOrDefault(terminal, Set.of(terminal));
    }

    /** Whether a terminal belongs to the way back. */
    public boolean isReturn(String terminal) {
        return role(terminal) == Role.RETURN;
    }

    /** Edges of a shortest way (fewest edges) between two terminals, from the first to the second; null if there is none. */
    public List<Link> way(String from, String to) {
        if (!joins(from, to)) {
            return null;
        }
        GraphPath<String, Link> path = new BFSShortestPath<>(graph).getPath(from, to);
        return path == null ? null : path.getEdgeList();
    }

    /** What a run is for. */
    public Role role(Run run) {
        Role role = role(run.from().orElse(""));
        return role == Role.UNKNOWN ? role(run.to().orElse("")) : role;
    }

    /** The way through the contacts of a relay. */
    public Link contacts(Item.Relay relay) {
        return at(relay.id() + ".30").stream().filter(link -> link.item() == relay).findFirst().orElseThrow();
    }

    /** Every terminal that edges of the wanted kind lead to from this one, itself included. */
    public Set<String> reached(String from, Predicate<Link> through) {
        Set<String> reached = new LinkedHashSet<>(Set.of(from));
        Deque<String> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            String at = open.remove();
            for (Link link : at(at)) {
                if (through.test(link) && reached.add(link.other(at))) {
                    open.add(link.other(at));
                }
            }
        }
        return reached;
    }

    /** Whether a terminal is a joint: what a conductor is for goes through it. */
    public boolean isJoint(String terminal) {
        return job.itemOf(terminal) instanceof Item.Joint;
    }

    /** The runs of one line from a terminal on, in order: where two runs alone meet in a joint, the line goes on. */
    public List<Run> line(Run first, String from) {
        List<Run> line = new ArrayList<>();
        String at = from;
        for (Link link = of(first); link != null && !line.contains(link.run());) {
            Link here = link;
            line.add(here.run());
            at = here.other(at);
            List<Link> onward = isJoint(at) ? at(at).stream().filter(next -> next != here).toList() : List.of();
            link = onward.size() == 1 ? onward.get(0) : null;
        }
        return line;
    }

    /** The end of a line of runs that begins at a terminal. */
    public String farEnd(Run first, String from) {
        String at = from;
        for (Run run : line(first, from)) {
            at = of(run).other(at);
        }
        return at;
    }

    /** The far ends of what hangs on a terminal, the other sides of joints among them. */
    public Set<String> farEnds(String terminal) {
        Set<String> ends = new LinkedHashSet<>();
        Set<String> seen = new HashSet<>(Set.of(terminal));
        Deque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            String at = open.remove();
            for (Link link : at(at)) {
                String next = link.other(at);
                if (seen.add(next)) {
                    (isJoint(next) ? open : ends).add(next);
                }
            }
        }
        return ends;
    }

    /** What the conductors beyond a joint are for; of several the one that {@link Role} names first. */
    private Role throughJoint(String joint) {
        return farEnds(joint).stream().map(this::role).min(Comparator.naturalOrder()).orElse(Role.UNKNOWN);
    }

    private Role role(String terminal) {
        if (terminal.equals(BODY)) {
            return Role.RETURN;
        }
        Item item = job.itemOf(terminal);
        if (item == null) {
            return Role.UNKNOWN;
        }
        if (item instanceof Item.Joint) {
            return throughJoint(terminal);
        }
        String name = terminal.substring(terminal.indexOf('.') + 1);
        if (item instanceof Item.Fuse || item instanceof Item.FuseBlock) {
            return Role.FEED;
        }
        if (item instanceof Item.Relay) {
            // A coil is driven by whatever its wire comes from.
            return name.equals("30") || name.equals("87") ? Role.FEED : Role.UNKNOWN;
        }
        if (item instanceof Item.Converter) {
            return name.equals("common") ? Role.RETURN : Role.FEED;
        }
        if (item instanceof Item.Speaker || item instanceof Item.PassiveNetwork || item instanceof Item.LoadResistor) {
            return Role.SPEAKER;
        }
        return switch (name) {
            case "positive", "output", "supply" -> Role.FEED;
            case "negative", "case", "ground", "stud", "bar" -> Role.RETURN;
            case "turn-on", "turn-on-out", "wake", "memory", "ignition", "illumination" -> Role.CONTROL;
            default -> name.startsWith("signal-") || name.startsWith("out-") || name.equals("reference") ? Role.SIGNAL : Role.SPEAKER;
        };
    }
}
