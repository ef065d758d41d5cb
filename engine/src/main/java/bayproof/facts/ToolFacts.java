package bayproof.facts;

import bayproof.demand.Limit;
import bayproof.read.Item;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Vehicle;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.PlannedTool;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.StepTools;
import bayproof.vocabulary.ToolUse;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about tools: which a step names and the shop has, and which the planned work takes whether named or not. */
final class ToolFacts {
    private static final String STEPS = "steps";
    /** Limits of this name list the kinds of step that a tool belongs to. */
    private static final String STEPS_WITH = "steps-with-";
    private static final String FIT = "fit";
    private static final String TORQUE_WRENCH = "torque-wrench";
    private static final String PANEL_TOOLS = "panel-tools";

    private final Model model;
    private final Collection<Plan.Step> steps;
    private final At nowhere;

    ToolFacts(Model model) {
        this.model = model;
        this.steps = model.job.plan().steps().values();
        this.nowhere = model.job.planAt();
    }

    void collect(Consumer<Fact> facts) {
        if (steps.isEmpty()) {
            Shown<Boolean> open = Shown.missing(new Need(STEPS, "the steps of the work, each with its tools", nowhere));
            facts.accept(new ToolUse(STEPS, nowhere, open, open.map(x -> "")));
            facts.accept(new StepTools(STEPS, nowhere, Shown.of(true), open, open.map(x -> "")));
        }
        for (Plan.Step step : steps) {
            facts.accept(use(step));
            facts.accept(ofItsKind(step));
        }
        crimping(facts);
        drilling(facts);
    }

    private ToolUse use(Plan.Step step) {
        Shown<List<String>> lacking = step.tools().then(tools -> tools.isEmpty() ? Shown.of(List.of())
                : model.job.plan().shopTools().map(shop -> tools.stream().filter(tool -> !shop.contains(tool)).sorted().toList()));
        return new ToolUse(step.path(), step.at(), lacking.map(List::isEmpty), lacking.map(tools -> String.join(", ", tools)));
    }

    // what a step takes

    private StepTools ofItsKind(Plan.Step step) {
        Shown<List<String>> wanted = step.does().then(kind -> kind.equals(FIT) ? fitting(step) : Shown.of(tools(kind)));
        Shown<List<String>> lacking = wanted.with(step.tools(), (all, named) -> all.stream().filter(tool -> !named.contains(tool)).toList());
        return new StepTools(step.path(), step.at(), wanted.map(all -> !all.isEmpty()), lacking.map(List::isEmpty),
                lacking.map(tools -> tools.isEmpty() ? "all named" : "not named: " + String.join(", ", tools)));
    }

    private List<String> tools(String kind) {
        return model.job.limits().all().stream().filter(limit -> limit.name().startsWith(STEPS_WITH) && limit.words().contains(kind))
                .map(Limit::name).map(name -> name.substring(STEPS_WITH.length())).sorted().toList();
    }

    /** What is held by threads is torqued; what takes a factory part off opens trim. */
    private Shown<List<String>> fitting(Plan.Step step) {
        Shown<Boolean> threaded = step.needs().then(ids -> {
            Shown<Boolean> any = Shown.of(false);
            for (String id : ids) {
                Item item = model.job.items().get(id);
                any = item == null || item.mount() == null ? any
                        : Kleene.or(any, item.mount().thread().map(model.limit("torqued-threads").words()::contains));
            }
            return any;
        });
        return threaded.with(step.removes(), (torqued, removed) -> {
            List<String> tools = new ArrayList<>();
            if (!removed.isEmpty()) {
                tools.add(PANEL_TOOLS);
            }
            if (torqued) {
                tools.add(TORQUE_WRENCH);
            }
            return tools;
        });
    }

    // what the plan takes somewhere

    private void crimping(Consumer<Fact> facts) {
        TreeMap<String, At> tools = new TreeMap<>();
        for (Run run : model.job.plan().runs().values()) {
            for (Run.End end : List.of(run.ends().from(), run.ends().to())) {
                if (end.tool() instanceof Shown.Given<String> tool) {
                    tools.putIfAbsent(tool.value(), end.at());
                }
            }
        }
        tools.forEach((tool, at) -> facts.accept(planned("crimps", "shop-tools." + tool, at, Shown.of(true), List.of(tool))));
    }

    private void drilling(Consumer<Fact> facts) {
        for (Vehicle.PassThrough hole : model.job.passThroughs().values()) {
            facts.accept(planned("drills", hole.path(), hole.at(), hole.origin().map("drilled"::equals), model.limit("hole-tools").words()));
        }
    }

    /** A step whose tools nobody wrote may be the one that names it. */
    private PlannedTool planned(String work, String subject, At at, Shown<Boolean> applies, List<String> oneOf) {
        Shown<Boolean> named = Shown.of(false);
        for (Plan.Step step : steps) {
            named = Kleene.or(named, step.tools().map(tools -> tools.stream().anyMatch(oneOf::contains)));
        }
        Shown<Boolean> anyStep = steps.isEmpty() ? Shown.missing(new Need(STEPS, "the step that takes " + String.join(" or ", oneOf), nowhere)) : named;
        return new PlannedTool(subject, at, work, applies, anyStep, Shown.of(String.join(" or ", new TreeSet<>(oneOf))));
    }
}
