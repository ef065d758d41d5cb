package bayproof.facts;

import bayproof.graph.WorkOrder;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Attestation;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.NeededPart;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.PowerStep;
import bayproof.vocabulary.PowerWork;
import bayproof.vocabulary.RestraintStep;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.TrimStep;
import bayproof.vocabulary.WorkPlan;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;

/** Facts about the steps of the work: their order and what must be on hand. */
final class WorkFacts {
    /** Subject of everything that no step was written for. */
    private static final String STEPS = "steps";
    private static final String DISCONNECT = "disconnect-battery";
    private static final String WAIT = "wait-restraints";
    private static final String UNPLUG = "unplug-restraints";
    private static final String REPLUG = "reconnect-restraints";
    private static final String TEARDOWN = "teardown";
    private static final String TEST = "function-test";
    private static final String TRIM = "close-trim";
    private static final List<String> POWER = List.of("reconnect-battery", "first-power");

    private final Model model;
    private final Collection<Plan.Step> steps;
    private final WorkOrder order;
    private final At nowhere;

    WorkFacts(Model model) {
        this.model = model;
        this.steps = model.job.plan().steps().values();
        this.order = new WorkOrder(model.job.plan().steps());
        this.nowhere = model.job.planAt();
    }

    void collect(Consumer<Fact> facts) {
        if (steps.isEmpty()) {
            nothingWritten(facts);
            return;
        }
        Shown<List<String>> loop = order.loop();
        facts.accept(new WorkPlan(STEPS, steps.iterator().next().at(), loop.map(List::isEmpty), loop.map(ids -> String.join(" -> ", ids))));
        for (Plan.Step step : steps) {
            // What a step of another kind would be asked for is not worked out.
            if (mayBe(step, model.limit("power-work").words())) {
                facts.accept(new PowerWork(step.path(), step.at(), is(step, model.limit("power-work").words()), someBefore(DISCONNECT, step)));
            }
            if (mayBe(step, List.of(UNPLUG))) {
                facts.accept(restraints(step));
            }
            if (mayBe(step, POWER)) {
                facts.accept(power(step));
            }
            if (mayBe(step, List.of(TRIM))) {
                facts.accept(new TrimStep(step.path(), step.at(), is(step, List.of(TRIM)), someBefore(TEST, step)));
            }
        }
        unwritten(facts);
        parts(facts);
    }

    private void nothingWritten(Consumer<Fact> facts) {
        Shown<Boolean> yes = Shown.of(true);
        Shown<Boolean> open = noStep("the steps of the work, each with what it comes after");
        facts.accept(new WorkPlan(STEPS, nowhere, open, open.map(x -> "")));
        facts.accept(new PowerWork(STEPS, nowhere, yes, open));
        facts.accept(new RestraintStep(STEPS, nowhere, yes, open.map(x -> 0.0), open.map(x -> 0.0), open.map(x -> new Attestation("", "", "")), false, open.map(x -> 0.0), open));
        facts.accept(new PowerStep(STEPS, nowhere, yes, open, open.map(x -> "")));
        facts.accept(new TrimStep(STEPS, nowhere, yes, open));
        facts.accept(new NeededPart(STEPS, nowhere, yes, open));
    }

    /** Steps that a job with such runs, grounds and pins must have, and that nobody wrote. */
    private void unwritten(Consumer<Fact> facts) {
        List<Need> work = new ArrayList<>();
        expect(!model.job.plan().runs().isEmpty(), "run-cables", work);
        expect(!model.job.itemsOf(Item.GroundPoint.class).isEmpty(), "ground", work);
        expect(!model.job.plan().pins().isEmpty(), "join-pins", work);
        if (!work.isEmpty()) {
            facts.accept(new PowerWork(STEPS, nowhere, Shown.of(true), Shown.missing(work)));
        }
        boolean powered = !model.job.plan().runs().isEmpty() || steps.stream().anyMatch(step -> mayBe(step, List.of(DISCONNECT)));
        if (powered && steps.stream().noneMatch(step -> mayBe(step, POWER))) {
            Shown<Boolean> open = noStep("the step that brings power back");
            facts.accept(new PowerStep(STEPS, nowhere, Shown.of(true), open, open.map(x -> "")));
        }
        if (steps.stream().anyMatch(step -> mayBe(step, List.of(TEARDOWN))) && steps.stream().noneMatch(step -> mayBe(step, List.of(TRIM)))) {
            facts.accept(new TrimStep(STEPS, nowhere, Shown.of(true), noStep("the step that closes the trim")));
        }
    }

    private void expect(boolean expected, String kind, List<Need> open) {
        if (expected && steps.stream().noneMatch(step -> mayBe(step, List.of(kind)))) {
            open.add(new Need(STEPS, "the step that does this: " + kind, nowhere));
        }
    }

    // restraints

    private RestraintStep restraints(Plan.Step step) {
        Shown<Double> wanted = model.job.vehicle().restraints().waitSeconds();
        return new RestraintStep(step.path(), step.at(), is(step, List.of(UNPLUG)), waited(step, Plan.Step::seconds), waited(step, Plan.Step::waitedSeconds), waiters(step), wanted.isGiven(), wanted, pluggedAgain(step));
    }

    /** Hours of the waiting steps between battery off and this one, as planned or as they were waited. */
    private Shown<Double> waited(Plan.Step unplug, Function<Plan.Step, Shown<Double>> time) {
        Shown<Double> sum = Shown.of(0.0);
        for (Plan.Step wait : others(unplug)) {
            Shown<Boolean> counts = waits(wait, unplug);
            if (!Kleene.is(counts, false)) {
                sum = sum.with(counts.with(time.apply(wait), (yes, seconds) -> seconds), Double::sum);
            }
        }
        return sum;
    }

    private Shown<Boolean> waits(Plan.Step wait, Plan.Step unplug) {
        return Kleene.and(Kleene.and(is(wait, List.of(WAIT)), order.before(wait, unplug)), someBefore(DISCONNECT, wait));
    }

    /** Who vouches for the waiting; each of several steps has to be vouched for. */
    private Shown<Attestation> waiters(Plan.Step unplug) {
        Shown<Attestation> word = null;
        for (Plan.Step wait : others(unplug)) {
            if (!Kleene.is(waits(wait, unplug), false)) {
                word = word == null ? wait.done().word() : word.with(wait.done().word(), (one, other) -> one);
            }
        }
        return word != null ? word : noStep("the step that waits for the restraints");
    }

    private Shown<Boolean> pluggedAgain(Plan.Step unplug) {
        if (steps.stream().noneMatch(step -> mayBe(step, POWER))) {
            return noStep("the step that brings power back");
        }
        return every(others(unplug), power -> Kleene.or(not(is(power, POWER)), any(others(power), plug -> Kleene.and(is(plug, List.of(REPLUG)),
                Kleene.and(order.before(unplug, plug), order.before(plug, power))))));
    }

    // power

    private PowerStep power(Plan.Step power) {
        List<String> before = model.limit("work-before-power").words();
        List<String> early = new ArrayList<>();
        Shown<Boolean> last = every(others(power), work -> {
            Shown<Boolean> done = Kleene.or(not(is(work, before)), order.before(work, power));
            if (Kleene.is(done, false)) {
                early.add(work.id());
            }
            return done;
        });
        return new PowerStep(power.path(), power.at(), is(power, POWER), last,
                last.map(yes -> yes ? "" : "not before it: " + String.join(", ", new TreeSet<>(early))));
    }

    // parts

    private void parts(Consumer<Fact> facts) {
        List<Plan.Step> teardowns = steps.stream().filter(step -> mayBe(step, List.of(TEARDOWN))).toList();
        Shown<Boolean> opened = any(teardowns, step -> is(step, List.of(TEARDOWN)));
        for (Plan.Step step : steps) {
            if (!step.needs().isGiven()) {
                facts.accept(new NeededPart(step.path(), step.at(), opened, step.needs().map(x -> true)));
            }
        }
        for (Item item : model.job.items().values()) {
            boolean blocking = item instanceof Item.Powered || item instanceof Item.Converter || item instanceof Item.Enclosure
                    || item instanceof Item.Speaker || item instanceof Item.Battery || item instanceof Item.Harness
                    || item instanceof Item.GroundBar;
            if (blocking && !item.path().startsWith("supply.")) {
                facts.accept(new NeededPart(item.path(), item.at(), opened, onHand(item, teardowns)));
            }
        }
    }

    /** On hand before the vehicle is opened, and fitted by a later step: an item that no step fits was forgotten. */
    private Shown<Boolean> onHand(Item item, List<Plan.Step> teardowns) {
        Shown<Boolean> early = any(steps, step -> Kleene.and(step.needs().map(needs -> needs.contains(item.id())),
                every(teardowns, teardown -> teardown == step ? Shown.of(true) : order.before(step, teardown))));
        Shown<Boolean> fitted = any(steps, step -> Kleene.and(step.needs().map(needs -> needs.contains(item.id())),
                any(teardowns, teardown -> teardown == step ? Shown.of(false) : order.before(teardown, step))));
        return fitted.then(yes -> yes ? early : noStep("the step that fits " + item.id() + ", with the item among its needs"));
    }

    // three-valued questions about steps

    private static boolean mayBe(Plan.Step step, Collection<String> kinds) {
        return !Kleene.is(is(step, kinds), false);
    }

    private static Shown<Boolean> is(Plan.Step step, Collection<String> kinds) {
        return step.does().map(kinds::contains);
    }

    private static Shown<Boolean> not(Shown<Boolean> statement) {
        return statement.map(yes -> !yes);
    }

    private List<Plan.Step> others(Plan.Step step) {
        return steps.stream().filter(other -> other != step).toList();
    }

    private Shown<Boolean> someBefore(String kind, Plan.Step step) {
        return any(others(step), other -> Kleene.and(is(other, List.of(kind)), order.before(other, step)));
    }

    private static Shown<Boolean> any(Collection<Plan.Step> steps, Function<Plan.Step, Shown<Boolean>> question) {
        Shown<Boolean> answer = Shown.of(false);
        for (Plan.Step step : steps) {
            answer = Kleene.or(answer, question.apply(step));
        }
        return answer;
    }

    private static Shown<Boolean> every(Collection<Plan.Step> steps, Function<Plan.Step, Shown<Boolean>> question) {
        Shown<Boolean> answer = Shown.of(true);
        for (Plan.Step step : steps) {
            answer = Kleene.and(answer, question.apply(step));
        }
        return answer;
    }

    private <T> Shown<T> noStep(String ask) {
        return Shown.missing(new Need(STEPS, ask, nowhere));
    }
}
