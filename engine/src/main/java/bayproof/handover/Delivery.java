package bayproof.handover;

import bayproof.read.FactoryFunction;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.UnusableInput;
import bayproof.read.Visit;
import bayproof.review.Evaluation;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What is looked at beside the verdicts when a vehicle goes back, each thing as the job's files say it.
 *
 * @param wishes     what the customer wished; wishes that are none are left out
 * @param found      what was found in the vehicle; missing where nobody said, an empty list where it was nothing
 * @param functions  functions of the vehicle, before and after
 * @param built      planned against built
 * @param worst      the readings that lie farthest from the plan
 * @param visits     visits in the order of the plan
 * @param unfinished runs that the last visit left unfinished; missing where nobody said
 */
public record Delivery(List<Wish> wishes, Shown<List<Plan.Found>> found, List<FactoryFunction> functions, List<Built> built, List<Built> worst,
                       List<Visit> visits, Shown<List<String>> unfinished) {
    private static final String NOTHING = "none";
    private static final int WORST = 3;
    private static final String BASELINE = "supply.standby-before";

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
        functions = List.copyOf(functions);
        built = List.copyOf(built);
        worst = List.copyOf(worst);
        visits = List.copyOf(visits);
    }

    /**
     * What stands in a job.
     *
     * @throws UnusableInput when the job cannot be used without its readings, which is a fault of ours
     */
    public static Delivery of(Evaluation evaluation) throws UnusableInput {
        Job job = evaluation.job();
        Plan plan = job.plan();
        List<Wish> wishes = plan.wishes().values().stream().filter(wish -> !wish.want().orElse("").equals(NOTHING))
                .map(wish -> new Wish(wish.id(), wish.want(), wish.checkedBy(), wish.kept())).toList();
        Shown<Map<String, Plan.Found>> found = plan.found();
        List<Built> built = BuiltTable.of(evaluation, withoutReadings(evaluation));
        List<Visit> visits = new ArrayList<>(plan.visits().values());
        Visit last = plan.lastVisit();
        return new Delivery(wishes, found.map(things -> List.copyOf(things.values())), List.copyOf(plan.functions().values()), built,
                BuiltTable.worst(built, WORST), visits, last == null ? Shown.missing(new Need("visits", "the visits", job.planAt())) : last.unfinished());
    }

    /** What the vehicle drew asleep before anything was taken apart is what its standby was planned from, so that reading stays. */
    private static Evaluation withoutReadings(Evaluation evaluation) throws UnusableInput {
        return Evaluation.of(evaluation.files().withReadings(BASELINE::equals), evaluation.today());
    }

    /** Wishes that were met. */
    public int met() {
        return (int) wishes.stream().filter(Wish::met).count();
    }
}
