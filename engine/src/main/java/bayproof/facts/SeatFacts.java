package bayproof.facts;

import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.SeatCrossing;
import bayproof.vocabulary.Shown;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about runs that reach a seat from the body, and so have to follow it. */
final class SeatFacts {
    private static final String SEAT = "seat";

    private final Model model;
    private final Map<String, Vehicle.Zone> zones;

    SeatFacts(Model model) {
        this.model = model;
        this.zones = model.job.vehicle().zones();
    }

    /** A vehicle in whose sheet no zone is a seat has no such run. */
    void collect(Consumer<Fact> facts) {
        if (zones.values().stream().noneMatch(zone -> zone.kind().orElse(SEAT).equals(SEAT))) {
            return;
        }
        Ladders ladders = new Ladders(model);
        for (Run run : model.job.plan().runs().values()) {
            Shown<Set<String>> passed = model.body.zonesPassed(run);
            facts.accept(new SeatCrossing(run.path(), run.at(), passed.then(this::crosses), run.slackMetres(), passed.then(this::travel),
                    ladders.larger(run, "slack", run.slackMetres())));
        }
    }

    /** Whether a seat and something else lie on the way. */
    private Shown<Boolean> crosses(Set<String> passed) {
        Shown<Boolean> seat = Shown.of(false);
        Shown<Boolean> other = Shown.of(false);
        for (String id : passed) {
            Shown<String> kind = model.zoneKind(id, model.job.planAt());
            seat = Kleene.or(seat, kind.map(SEAT::equals));
            other = Kleene.or(other, kind.map(word -> !word.equals(SEAT)));
        }
        return Kleene.and(seat, other);
    }

    /** The longest way that a seat on the run moves. */
    private Shown<Double> travel(Set<String> passed) {
        Shown<Double> most = Shown.of(0.0);
        for (String id : passed) {
            Vehicle.Zone zone = zones.get(id);
            if (zone != null && zone.kind().orElse("").equals(SEAT)) {
                most = most.with(zone.travelMetres(), Math::max);
            }
        }
        return most;
    }
}
