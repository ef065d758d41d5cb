package bayproof.graph;

import bayproof.read.Item;
import bayproof.read.Job;
import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Edges that lie on a closed way of conductors, where a current divides between parallel ways. An edge between two such
 * closed ways counts among them.
 */
public final class ParallelWays {
    private final Job job;
    private final WiringGraph wiring;
    private final Set<Link> parallel;

    public ParallelWays(Job job, WiringGraph wiring) {
        this.job = job;
        this.wiring = wiring;
        this.parallel = new LinkedHashSet<>(wiring.links());
        Map<String, Integer> degree = new HashMap<>();
        for (Link link : parallel) {
            degree.merge(link.from(), 1, Integer::sum);
            degree.merge(link.to(), 1, Integer::sum);
        }
        ArrayDeque<String> ends = new ArrayDeque<>();
        degree.forEach((terminal, links) -> {
            if (links == 1) {
                ends.add(terminal);
            }
        });
        while (!ends.isEmpty()) {
            String end = ends.remove();
            for (Link link : wiring.at(end)) {
                if (parallel.remove(link) && degree.merge(link.other(end), -1, Integer::sum) == 1) {
                    ends.add(link.other(end));
                }
            }
        }
    }

    public boolean has(Link link) {
        return parallel.contains(link);
    }

    /** An edge with the edges that carry the same current, because nothing else meets them where they meet. */
    public Set<Link> inSeries(Link link) {
        Set<Link> series = new LinkedHashSet<>();
        ArrayDeque<Link> open = new ArrayDeque<>(List.of(link));
        while (!open.isEmpty()) {
            Link next = open.remove();
            if (series.add(next)) {
                for (String end : List.of(next.from(), next.to())) {
                    List<Link> meeting = wiring.at(end);
                    if (meeting.size() == 2 && isPassive(end)) {
                        open.addAll(meeting);
                    }
                }
            }
        }
        return series;
    }

    private boolean isPassive(String terminal) {
        Item item = job.itemOf(terminal);
        return item == null || item instanceof Item.Fuse || item instanceof Item.FuseBlock || item instanceof Item.GroundPoint
                || item instanceof Item.Relay || item instanceof Item.Joint;
    }
}
