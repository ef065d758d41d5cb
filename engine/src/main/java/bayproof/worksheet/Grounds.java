package bayproof.worksheet;

import bayproof.graph.Link;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;

/** Where the returns meet. */
public final class Grounds {
    /**
     * A ground point or a ground bar.
     *
     * @param point    the point; null for a bar
     * @param arriving runs that end on it
     */
    public record Ground(String id, Shown<String> place, Item.GroundPoint point, List<String> arriving) {
    }

    private Grounds() {
    }

    static List<Ground> of(Job job) {
        WiringGraph wiring = new WiringGraph(job);
        List<Ground> grounds = new ArrayList<>();
        for (Item item : job.items().values()) {
            if (item instanceof Item.GroundPoint point) {
                grounds.add(new Ground(item.id(), item.place(), point, runs(wiring, item.id() + ".stud")));
            } else if (item instanceof Item.GroundBar) {
                grounds.add(new Ground(item.id(), item.place(), null, runs(wiring, item.id() + ".bar")));
            }
        }
        return grounds;
    }

    private static List<String> runs(WiringGraph wiring, String terminal) {
        return wiring.at(terminal).stream().filter(link -> link.kind() == Link.Kind.RUN).map(Link::id).toList();
    }
}
