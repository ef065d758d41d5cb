package bayproof.facts;

import bayproof.graph.Role;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Crossing;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.HoleEdge;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Facts about the way of runs through the body: each hole in use, and each run that leaves its zone. */
final class BodyFacts {
    private final Model model;

    BodyFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        Map<String, Boolean> powerThrough = new TreeMap<>();
        for (Run run : model.job.runs().values()) {
            if (model.job.isFactory(run)) {
                continue;
            }
            boolean power = model.wiring.role(run).isPower();
            run.through().orElse(List.of()).forEach(hole -> powerThrough.merge(hole, power, Boolean::logicalOr));
            crossing(run, power, facts);
        }
        powerThrough.forEach((id, power) -> {
            Vehicle.PassThrough hole = model.job.passThroughs().get(id);
            if (hole == null) {
                Shown<Boolean> unknown = Shown.missing(new Need("pass-throughs." + id + ".panel", "panel of the pass-through " + id, model.job.planAt()));
                facts.accept(new HoleEdge("pass-throughs." + id, model.job.planAt(), power, unknown, unknown.map(x -> ""), null));
            } else {
                facts.accept(new HoleEdge(hole.path(), hole.at(), power,
                        hole.panel().map(panel -> model.limit("metal-panels").words().contains(panel)), hole.edge(),
                        Ladders.knob(() -> List.of("grommet"), "pass-throughs", id, "edge")));
            }
        });
    }

    /** A run is a subject unless it is known to stay in one zone or its holes are known to lead through. */
    private void crossing(Run run, boolean power, Consumer<Fact> facts) {
        Shown<List<String>> ends = model.body.endZones(run);
        boolean staysInside = ends.isGiven() && ends.orElse(List.of()).get(0).equals(ends.orElse(List.of()).get(1))
                && run.through().orElse(List.of()).isEmpty() && model.body.holesOnRoutes(run).isEmpty();
        if (staysInside) {
            return;
        }
        List<String> named = run.through().orElse(List.of());
        Shown<String> passage = model.body.passageLeads(run).then(leads ->
                leads && named.containsAll(model.body.holesOnRoutes(run)) ? Shown.of(named.isEmpty() ? "none" : String.join(", ", named))
                        : Shown.missing(model.body.wayOut(run)));
        facts.accept(new Crossing(run.path(), run.at(), power || model.wiring.role(run) == Role.UNKNOWN, passage));
    }
}
