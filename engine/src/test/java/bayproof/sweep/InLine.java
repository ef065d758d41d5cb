package bayproof.sweep;

import bayproof.read.Item;
import bayproof.read.JobFiles;
import bayproof.read.Run;
import bayproof.read.Tree;
import bayproof.read.Tree.ListTree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Tree.ScalarTree;
import bayproof.review.Evaluation;
import java.math.BigDecimal;
import java.util.List;

/** A run cut in two halves that a joint without loss puts in line again, close to one of its ends. */
final class InLine {
    static final String ON = "-on";
    static final String JOINT = "-joint";

    private InLine() {
    }

    /** Whether a run can be cut so: a length to halve, two ends, and at this one an item whose place the joint can have. */
    static boolean canBeCut(Evaluation job, Run run, String near) {
        Item item = job.job().itemOf((near.equals("from") ? run.from() : run.to()).orElse(""));
        return new Spot("plan", List.of("runs", run.id())).in(job.files()) instanceof MapTree map && map.get("length") instanceof ScalarTree
                && run.from().isGiven() && run.to().isGiven() && item != null && item.place().isGiven();
    }

    /**
     * The job with a run cut.
     *
     * @param near the end in whose place the joint lies: {@code from} or {@code to}
     */
    static JobFiles cut(JobFiles files, Evaluation job, Run run, String near) {
        MapTree plan = files.tree("plan");
        MapTree runs = (MapTree) plan.get("runs");
        MapTree whole = (MapTree) runs.get(run.id());
        ScalarTree length = (ScalarTree) whole.get("length");
        String joint = run.id() + JOINT;
        MapTree first = whole.with("to", text(joint + ".joint", whole)).with("length", half(length));
        MapTree second = whole.with("from", text(joint + ".joint", whole)).with("length", half(length));
        if (near.equals("from")) {
            first = inside(first);
        } else {
            second = inside(second);
        }
        String place = job.job().itemOf((near.equals("from") ? run.from() : run.to()).orElse("")).place().orElse("");
        MapTree item = new MapTree(java.util.Map.of(), whole.at()).with("kind", text("joint", whole)).with("place", text(place, whole))
                .with("resistance", text("0 ohm", whole)).with("stud", text("plug", whole));
        return files.with("plan", plan.with("items", ((MapTree) plan.get("items")).with(joint, item))
                .with("runs", runs.with(run.id(), ended(first, "to", "from")).with(run.id() + ON, ended(second, "from", "to"))));
    }

    /** The half that stays beside the item: it goes through no hole. */
    private static MapTree inside(MapTree half) {
        MapTree inside = half.without("along");
        return half.get("through") == null ? inside : inside.with("through", new ListTree(List.of(), half.at()));
    }

    /** The end at the joint is made like the other end, with a plug on it. */
    private static MapTree ended(MapTree half, String end, String like) {
        if (!(half.get("ends") instanceof MapTree ends)) {
            return half;
        }
        MapTree made = (MapTree) ends.get(like);
        return half.with("ends", ends.with(end, made.get("terminal") == null ? made : made.with("terminal", text("plug", half))));
    }

    private static ScalarTree half(ScalarTree length) {
        String number = length.text().replaceFirst("(?<=[0-9]) ?[a-z].*", "");
        return new ScalarTree(new BigDecimal(number).divide(BigDecimal.valueOf(2)).toPlainString() + length.text().substring(number.length()), false, length.at());
    }

    private static ScalarTree text(String text, Tree beside) {
        return new ScalarTree(text, false, beside.at());
    }
}
