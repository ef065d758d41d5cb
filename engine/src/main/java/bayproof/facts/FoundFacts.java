package bayproof.facts;

import bayproof.read.Inspection;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FoundThing;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.LateFind;
import bayproof.vocabulary.LookedFor;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Facts about what was in the vehicle before the job. */
final class FoundFacts {
    private static final String ESTIMATE = "estimate-authorized";

    private final Model model;

    FoundFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        List<String> ends = model.limit("decisions-that-end-it").words();
        for (Plan.Found found : model.job.plan().found().orElse(Map.of()).values()) {
            facts.accept(new FoundThing(found.path(), found.at(), found.what(), found.state(), found.decision(), Kleene.or(found.state().map("dead"::equals),
                    Kleene.or(found.fused().map("yes"::equals), found.decision().map(ends::contains)))));
        }
        if (!model.job.plan().found().isGiven()) {
            Shown<String> missing = model.job.plan().found().map(things -> "");
            facts.accept(new FoundThing("found", model.job.planAt(), missing, missing, missing, missing.map(x -> true)));
        }
        lateFinds(facts);
        facts.accept(new LookedFor("looked", model.job.plan().looked().at(), look(model.job.plan().looked())));
    }

    /** The estimate counts as authorized when somebody looked that it is. */
    private void lateFinds(Consumer<Fact> facts) {
        Inspection look = model.job.plan().inspections().get(ESTIMATE);
        Shown<String> estimate = look != null ? look.when()
                : Shown.missing(new Need("inspections." + ESTIMATE + ".when", "when the estimate was seen to be authorized", model.job.planAt()));
        for (Plan.Found found : model.job.plan().found().orElse(Map.of()).values()) {
            facts.accept(new LateFind(found.path(), found.at(), found.when().with(estimate, Days::isAfter), found.agreed().word(),
                    found.when().with(found.agreed().when(), (seen, agreed) -> !Days.isAfter(seen, agreed))));
        }
    }

    private Shown<Attestation> look(Plan.Look look) {
        Shown<String> where = look.where().then(zones -> {
            List<Need> unseen = new ArrayList<>();
            if (zones.isEmpty()) {
                unseen.add(new Need(look.path() + ".where", "parts of the vehicle that were looked into", look.at()));
            }
            for (Vehicle.Zone zone : model.job.vehicle().zones().values()) {
                if (!zones.contains(zone.id()) && model.limit("zones-to-look-into").words().contains(zone.kind().orElse(""))) {
                    unseen.add(new Need(look.path() + ".where", "a look into " + zone.id(), look.at()));
                }
            }
            return unseen.isEmpty() ? Shown.of(String.join(", ", zones)) : Shown.missing(unseen);
        });
        return look.who().with(look.when(), (who, when) -> new String[] {who, when})
                .with(where, (said, zones) -> new Attestation(said[0], said[1], "looked into " + zones));
    }
}
