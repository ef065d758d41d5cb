package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.RoadTest;
import bayproof.vocabulary.DrivenTest;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FirstPower;
import bayproof.vocabulary.OrderOfTimes;
import bayproof.vocabulary.PostStep;
import bayproof.vocabulary.RecordedDates;
import bayproof.vocabulary.Shown;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about the work as it was done: when, and with what care for the battery. */
final class DoneFacts {
    private static final String OFF = "disconnect-battery";
    private static final String BACK = "reconnect-battery";

    private final Model model;
    private final Plan plan;

    DoneFacts(Model model) {
        this.model = model;
        this.plan = model.job.plan();
    }

    void collect(Consumer<Fact> facts) {
        for (Plan.Step step : plan.steps().values()) {
            String does = step.does().orElse("");
            Shown<Boolean> inTurn = step.does().with(step.negativePost(), (what, post) -> post.equals(what.equals(OFF) ? "first" : "last"));
            facts.accept(new PostStep(step.path(), step.at(), step.does().map(what -> what.equals(OFF) || what.equals(BACK)), inTurn,
                    step.negativePost().map(post -> "the negative post " + post)));
            if (does.equals("first-power")) {
                facts.accept(new FirstPower(step.path(), step.at(), step.fuseAmperes()));
            }
        }
        facts.accept(order());
        facts.accept(dates());
        if (!model.job.itemsOf(Item.Amplifier.class).isEmpty()) {
            RoadTest test = plan.roadTest();
            facts.accept(new DrivenTest(test.path(), test.at(), test.seconds(), test.vouched().word()));
        }
    }

    // in the planned order

    /** Steps whose records carry no time are left to whoever looked at the order. */
    private OrderOfTimes order() {
        TreeSet<String> late = new TreeSet<>();
        for (Plan.Step step : plan.steps().values()) {
            for (String id : step.after().orElse(List.of())) {
                plan.steps().get(id).done().when().with(step.done().when(), Days::isAfter).map(wrong -> wrong && late.add(id + " before " + step.id()));
            }
        }
        return new OrderOfTimes("steps", model.job.planAt(), Shown.of(late.isEmpty()), Shown.of(String.join(", ", late)));
    }

    // inside the booking

    private RecordedDates dates() {
        Shown<LocalDate> came = Days.day(plan.checkIn().when(), "check-in.when", plan.checkIn().at());
        Shown<LocalDate> went = Days.day(plan.delivered().when(), "delivered.when", plan.delivered().at());
        Map<String, LocalDate> days = new TreeMap<>();
        model.job.taken().values().forEach(taken -> note("readings." + taken.id(), taken.when(), days));
        plan.pins().values().forEach(pin -> note(pin.path(), pin.identified().when(), days));
        plan.inspections().forEach((id, look) -> note("inspections." + id, look.when(), days));
        plan.steps().values().forEach(step -> note(step.path(), step.done().when(), days));
        TreeSet<String> outside = new TreeSet<>();
        came.with(went, (first, last) -> {
            days.forEach((record, day) -> {
                if (day.isBefore(first) || day.isAfter(last)) {
                    outside.add(record + " on " + day);
                }
            });
            return true;
        });
        return new RecordedDates("delivered.when", plan.delivered().at(), came.with(went, (first, last) -> outside.isEmpty()),
                Shown.of(String.join(", ", outside)));
    }

    private void note(String record, Shown<String> when, Map<String, LocalDate> days) {
        LocalDate day = Days.day(when, record, model.job.planAt()).orElse(null);
        if (day != null) {
            days.put(record, day);
        }
    }
}
