package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.Role;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.read.Run;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The live side of the wiring seen from the batteries' positive posts: for each terminal the way back to its post.
 * Factory links are left out: their protection is the vehicle maker's.
 */
final class FeedTree {
    private final Model model;
    /** For each terminal reached: the edge it was reached by, from the post side. */
    private final Map<String, Link> reachedBy = new LinkedHashMap<>();
    private final Map<String, String> parent = new HashMap<>();
    private final List<Run> fromPost = new ArrayList<>();

    FeedTree(Model model) {
        this.model = model;
        ArrayDeque<String> open = new ArrayDeque<>();
        for (Item.Battery battery : model.job.itemsOf(Item.Battery.class)) {
            String post = battery.id() + ".positive";
            reachedBy.put(post, null);
            open.add(post);
        }
        while (!open.isEmpty()) {
            String terminal = open.remove();
            for (Link link : model.wiring.at(terminal)) {
                if (!isFeed(link)) {
                    continue;
                }
                if (reachedBy.get(terminal) == null && link.run() != null && !fromPost.contains(link.run())) {
                    fromPost.add(link.run());
                }
                String next = link.other(terminal);
                if (!reachedBy.containsKey(next)) {
                    reachedBy.put(next, link);
                    parent.put(next, terminal);
                    open.add(next);
                }
            }
        }
    }

    private boolean isFeed(Link link) {
        return link.kind() == Link.Kind.FUSE
                || link.kind() == Link.Kind.RUN && !model.job.isFactory(link.run()) && model.wiring.role(link.run()) == Role.FEED;
    }

    /** Runs that leave a battery's positive post, in the order of the files. */
    List<Run> runsFromPosts() {
        return fromPost;
    }

    boolean reaches(String terminal) {
        return reachedBy.containsKey(terminal);
    }

    /** The end of a run nearer to the post; null when no post feeds it. */
    String nearEnd(Link run) {
        if (reachedBy.get(run.to()) == run) {
            return run.from();
        }
        if (reachedBy.get(run.from()) == run) {
            return run.to();
        }
        return reaches(run.from()) ? run.from() : reaches(run.to()) ? run.to() : null;
    }

    /** The edges from a terminal back to its post, nearest first. */
    List<Link> back(String terminal) {
        List<Link> way = new ArrayList<>();
        for (String at = terminal; reachedBy.get(at) != null; at = parent.get(at)) {
            way.add(reachedBy.get(at));
        }
        return way;
    }

    /** Edges onward from the far end of a run, the run itself left out. */
    List<Link> onward(Link link, String nearEnd) {
        String far = link.other(nearEnd);
        return model.wiring.at(far).stream().filter(next -> next != link && isFeed(next)).toList();
    }

    /** Whether a terminal is the post of a battery. */
    boolean isPost(String terminal) {
        return reaches(terminal) && reachedBy.get(terminal) == null;
    }

    static boolean isOpen(String terminal) {
        return WiringGraph.isOpen(terminal);
    }
}
