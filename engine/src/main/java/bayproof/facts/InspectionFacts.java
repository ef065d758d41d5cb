package bayproof.facts;

import bayproof.read.Inspection;
import bayproof.read.InspectionList;
import bayproof.read.InspectionList.Point;
import bayproof.read.Plan;
import bayproof.units.Quantity;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Inspected;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;

/** Facts about the looks a job owes; one that nobody did is a subject too. */
final class InspectionFacts {
    private static final String GROUP = "inspections.";

    private final Model model;
    private final Plan plan;
    private final InspectedThings things;

    InspectionFacts(Model model) {
        this.model = model;
        this.plan = model.job.plan();
        this.things = new InspectedThings(model);
    }

    void collect(Consumer<Fact> facts) {
        InspectionList.points().values().forEach(point -> facts.accept(inspected(point)));
    }

    private Inspected inspected(Point point) {
        Inspection done = plan.inspections().get(point.id());
        Shown<Boolean> there = things.there(point.of());
        if (done == null) {
            At at = model.job.planAt();
            Shown<Attestation> nobody = Shown.missing(new Need(GROUP + point.id(), "who looked that " + point.look() + ", when, and what shows it", at));
            Shown<Boolean> unknown = nobody.map(any -> true);
            return new Inspected(GROUP + point.id(), at, point.id(), there, nobody, unknown, unknown, nobody.map(Attestation::who), unknown, unknown,
                    point.measures() == null ? Shown.of(0.0) : nobody.map(any -> 0.0));
        }
        return new Inspected(done.path(), done.at(), point.id(), there, done.word(), complete(done), done.faults().map(List::isEmpty),
                done.faults().map(found -> String.join(", ", found)), timely(point, done), byOther(point, done), measured(point, done));
    }

    /** What could not be looked at is not shown, whatever the rest looked like. */
    private static Shown<Boolean> complete(Inspection done) {
        return done.leftOut().then(missed -> missed.isEmpty() ? Shown.of(true)
                : Shown.missing(new Need(done.path() + ".left-out", "a look at " + String.join(", ", missed), done.leftOut().atOr(done.at()))));
    }

    /** Nobody can have looked at work before it was planned. */
    private Shown<Boolean> timely(Point point, Inspection done) {
        if (!point.afterWork()) {
            return Shown.of(true);
        }
        Shown<LocalDate> planned = Days.day(plan.job().date(), "job.date", model.job.planAt());
        return Days.day(done.when(), done.path() + ".when", done.at()).with(planned, (looked, day) -> !looked.isBefore(day));
    }

    private static Shown<Double> measured(Point point, Inspection done) {
        return point.measures() == null ? Shown.of(0.0) : done.measured().map(Quantity::si);
    }

    private Shown<Boolean> byOther(Point point, Inspection done) {
        return point.second() ? done.who().with(plan.job().preparedBy(), (who, author) -> !who.equals(author)) : Shown.of(true);
    }
}
