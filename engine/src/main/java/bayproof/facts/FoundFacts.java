package bayproof.facts;

import bayproof.read.Plan;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FoundThing;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.function.Consumer;

/** Facts about what was in the vehicle before the job. */
final class FoundFacts {
    private final Model model;

    FoundFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        List<String> ends = model.limit("decisions-that-end-it").words();
        for (Plan.Found found : model.job.plan().found().values()) {
            facts.accept(new FoundThing(found.path(), found.at(), found.state(), found.decision(), Kleene.or(found.state().map("dead"::equals),
                    Kleene.or(found.fused().map("yes"::equals), found.decision().map(ends::contains)))));
        }
        if (model.job.plan().found().isEmpty()) {
            Shown<String> missing = Shown.missing(new Need("found", "what was found in the vehicle; an entry that is dead says that nothing was",
                    model.job.planAt()));
            facts.accept(new FoundThing("found", model.job.planAt(), missing, missing, missing.map(x -> true)));
        }
    }
}
