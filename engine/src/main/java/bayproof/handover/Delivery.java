package bayproof.handover;

import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;

/**
 * What is looked at beside the verdicts when a vehicle goes back, each thing as the job's files say it.
 *
 * @param wishes what the customer wished; wishes that are none are left out
 * @param found  what was found in the vehicle; missing where nobody said, an empty list where it was nothing
 */
public record Delivery(List<Wish> wishes, Shown<List<Plan.Found>> found) {
    private static final String NOTHING = "none";

    /**
     * A wish and what became of it.
     *
     * @param id   its name
     * @param want the customer's words
     * @param by   what checks it
     * @param kept met, changed-with-consent or not-met
     */
    public record Wish(String id, Shown<String> want, Shown<String> by, Shown<String> kept) {
        public boolean met() {
            return kept.orElse("").equals("met");
        }
    }

    public Delivery {
        wishes = List.copyOf(wishes);
    }

    /** What stands in a job. */
    public static Delivery of(Job job) {
        List<Wish> wishes = job.plan().wishes().values().stream().filter(wish -> !wish.want().orElse("").equals(NOTHING))
                .map(wish -> new Wish(wish.id(), wish.want(), wish.checkedBy(), wish.kept())).toList();
        Shown<Map<String, Plan.Found>> found = job.plan().found();
        return new Delivery(wishes, found.map(things -> List.copyOf(things.values())));
    }

    /** Wishes that were met. */
    public int met() {
        return (int) wishes.stream().filter(Wish::met).count();
    }
}
