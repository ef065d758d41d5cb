package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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
 * @param otherPost      live post of another source at the far end of such a run; null where there is none
 */
public record FuseStation(String id, Item item, Shown<Double> ratingAmperes, String post, String liveSide, String deadSide,
                          Shown<Double> metresFromPost, int fusesBefore, List<String> behind, String otherPost) {

    /** Every fuse of a job: source by source, from the post outward. */
    public static List<FuseStation> of(Job job) {
        Model model = new Model(job);
        FeedTree feeds = new FeedTree(model);
        List<FuseStation> stations = new ArrayList<>();
        for (Link link : model.wiring.links()) {
            if (link.kind() == Link.Kind.FUSE) {
                stations.add(station(link, model, feeds));
            }
        }
        List<String> posts = stations.stream().map(FuseStation::post).distinct().toList();
        stations.sort(Comparator.<FuseStation>comparingInt(one -> one.post == null ? Integer.MAX_VALUE : posts.indexOf(one.post))
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
            } else {
                metres = metres.with(model.lengthMetres(each.run()), Double::sum);
            }
        }
        List<String> behind = new ArrayList<>();
        String other = null;
        for (Link next : feeds.onward(link, live)) {
            if (next.kind() == Link.Kind.RUN) {
                behind.add(next.id());
                String far = next.other(dead);
                other = feeds.isPost(far) ? far : other;
            }
        }
        return new FuseStation(link.id(), link.item(), link.ratingAmperes(), post, live, dead, metres, fuses, List.copyOf(behind), other);
    }
}
