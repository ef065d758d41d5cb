package bayproof.facts;

import bayproof.graph.WorkOrder;
import bayproof.read.Plan;
import bayproof.units.Dimension;
import bayproof.vocabulary.At;
import bayproof.vocabulary.BookedWork;
import bayproof.vocabulary.DriveTest;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.LastStep;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Facts about the steps as a whole: their hours, the handover at their end, and the drives before and after. */
final class ScheduleFacts {
    private static final String STEPS = "steps";
    private static final String TEST = "function-test";

    private final Model model;
    private final Collection<Plan.Step> steps;
    private final WorkOrder order;
    private final At nowhere;

    ScheduleFacts(Model model) {
        this.model = model;
        this.steps = model.job.plan().steps().values();
        this.order = new WorkOrder(model.job.plan().steps());
        this.nowhere = model.job.planAt();
    }

    void collect(Consumer<Fact> facts) {
        facts.accept(booked());
        handover(facts);
        facts.accept(new DriveTest(STEPS, nowhere, CabinSoundFacts.ownSound(model), drive("before the vehicle is opened", this::isBefore),
                drive("after the function test", this::isAfter)));
    }

    /** People who work side by side are not counted twice here: it is the sum of all hours. */
    private BookedWork booked() {
        Shown<Double> sum = steps.isEmpty() ? open("the steps of the work, each with its hours").map(x -> 0.0) : Shown.of(0.0);
        for (Plan.Step step : steps) {
            sum = sum.with(step.seconds(), Double::sum);
        }
        Shown<Double> all = sum.then(seconds -> Shown.of(seconds, () -> "sum of the hours of " + steps.size() + " steps = "
                + Model.print(seconds, Dimension.TIME)));
        if (all instanceof Shown.Given<Double> given) {
            model.numbers.put("steps.hours", given.value(), Dimension.TIME, given.calculation());
        }
        return new BookedWork("job.booked", nowhere, all, model.job.plan().job().bookedSeconds());
    }

    private void handover(Consumer<Fact> facts) {
        List<Plan.Step> ends = steps.stream().filter(step -> is(step, "handover")).toList();
        if (ends.isEmpty()) {
            facts.accept(new LastStep(STEPS, nowhere, open("the step that hands the vehicle over"), Shown.of("")));
        }
        for (Plan.Step end : ends) {
            TreeSet<String> later = new TreeSet<>();
            Shown<Boolean> last = Shown.of(true);
            Shown<Boolean> tested = Shown.of(steps.stream().noneMatch(step -> is(step, TEST)));
            for (Plan.Step step : steps) {
                Shown<Boolean> after = step == end ? Shown.of(false) : order.before(end, step);
                if (Kleene.is(after, true)) {
                    later.add(step.id());
                }
                last = Kleene.and(last, after.map(yes -> !yes));
                if (is(step, TEST)) {
                    tested = Kleene.or(tested, order.before(step, end));
                }
            }
            last = Kleene.and(last, tested);
            facts.accept(new LastStep(end.path(), end.at(), last, Shown.of(String.join(", ", later))));
        }
    }

    // drives

    private Shown<String> drive(String when, Predicate<Plan.Step> fits) {
        Shown<Integer> most = null;
        for (Plan.Step step : steps) {
            if (is(step, "drive-test") && fits.test(step)) {
                Shown<Integer> speeds = step.engineSpeeds();
                most = most == null ? speeds : most.with(speeds, Math::max);
            }
        }
        return most != null ? most.map(String::valueOf) : open("a drive with the audio off, " + when).map(x -> "");
    }

    private boolean isBefore(Plan.Step drive) {
        return steps.stream().filter(step -> is(step, "teardown")).allMatch(step -> Kleene.is(order.before(drive, step), true));
    }

    private boolean isAfter(Plan.Step drive) {
        return steps.stream().anyMatch(step -> is(step, TEST) && Kleene.is(order.before(step, drive), true));
    }

    private static boolean is(Plan.Step step, String kind) {
        return step.does().orElse("").equals(kind);
    }

    private Shown<Boolean> open(String ask) {
        return Shown.missing(new Need(STEPS, ask, nowhere));
    }
}
