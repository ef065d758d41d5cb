package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One fuse of the job as it is met on the way from a source.
 *
 * @param id             id of the fuse, with its outlet in a block
 * @param item           the fuse or the block
 * @param ratingAmperes  its rating
 * @param post           live post that feeds it; null where nothing does
 * @param liveSide       terminal on the side of the post; its first terminal where nothing feeds it
 * @param deadSide       terminal on the other side
 * @param metresFromPost conductor from the post to its live side
 * @param fusesBefore    fuses between the post and this one
 * @param behind         runs that leave the dead side
 * @param otherPost      live post that is reached through it, so that it joins two sources; null where there is none
 */
public record FuseStation(String id, Item item, Shown<Double> ratingAmperes, String post, String liveSide, String deadSide,
                          Shown<Double> metresFromPost, int fusesBefore, List<String> behind, String otherPost) {

    /** Every fuse of a job: source by source, from the post outward. */
    public static List<FuseStation> of(Job job) {
        Model model = new Model(job);
        FeedTree feeds = model.feeds();
        List<FuseStation> stations = new ArrayList<>();
        for (Link link : model.wiring.links()) {
            if (link.kind() == Link.Kind.FUSE) {
                stations.add(station(link, model, feeds));
            }
        }
        List<String> posts = stations.stream().map(FuseStation::post).distinct().toList();
        stations.sort(Comparator.<FuseStation>comparingInt(one -> rank(one, posts, job))
                .thenComparingInt(FuseStation::fusesBefore));
        return stations;
    }

    private static FuseStation station(Link link, Model model, FeedTree feeds) {
        String near = feeds.nearEnd(link);
        String live = near == null ? link.from() : near;
        String dead = link.other(live);
        List<Link> back = near == null ? List.of() : feeds.back(live);
        String post = near;
        Shown<Double> metres = near == null ? Shown.missing(new Need("runs", "the run that feeds " + link.id(), link.item().at())) : Shown.of(0.0);
        int fuses = 0;
        for (Link each : back) {
            post = each.other(post);
            if (each.kind() == Link.Kind.FUSE) {
                fuses++;
            } else if (each.kind() == Link.Kind.RUN) {
                metres = metres.with(model.lengthMetres(each.run()), Double::sum);
            }
        }
        List<String> behind = new ArrayList<>();
        for (Link next : feeds.onward(link, live)) {
            if (next.kind() == Link.Kind.RUN) {
                behind.add(next.id());
            }
        }
        return new FuseStation(link.id(), link.item(), link.ratingAmperes(), post, live, dead, metres, fuses, List.copyOf(behind), otherPost(link, live, feeds));
    }

    /** The first live post that is reached through the fuse. */
    private static String otherPost(Link fuse, String live, FeedTree feeds) {
        Map<String, Link> arrived = new LinkedHashMap<>();
        Deque<String> open = new ArrayDeque<>();
        arrived.put(fuse.other(live), fuse);
        open.add(fuse.other(live));
        while (!open.isEmpty()) {
            String at = open.remove();
            if (feeds.isPost(at)) {
                return at;
            }
            for (Link next : feeds.onward(arrived.get(at), arrived.get(at).other(at))) {
                if (!next.other(at).equals(live) && arrived.putIfAbsent(next.other(at), next) == null) {
                    open.add(next.other(at));
                }
            }
        }
        return null;
    }

    /** Batteries first: what charges them comes later. */
    private static int rank(FuseStation station, List<String> posts, Job job) {
        if (station.post == null) {
            return Integer.MAX_VALUE;
        }
        int place = posts.indexOf(station.post);
        return job.itemOf(station.post) instanceof Item.Battery ? place : posts.size() + place;
    }

    /** Whether it joins two sources, so that a small fuse would meet what one gives the other. */
    public boolean joinsSources() {
        return otherPost != null;
    }
}
