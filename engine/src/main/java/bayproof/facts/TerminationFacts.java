package bayproof.facts;

import bayproof.read.Run;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.RunEnd;
import bayproof.vocabulary.Shown;
import java.util.function.Consumer;

/** Facts about the ends of runs. */
final class TerminationFacts {
    private final Model model;

    TerminationFacts(Model model) {
        this.model = model;
    }

    /** Signal and speaker cables come with their plugs: their ends are looked at where the plan speaks of them. */
    void collect(Consumer<Fact> facts) {
        for (Run run : model.job.runs().values()) {
            boolean expected = !model.job.isFactory(run) && model.wiring.role(run).isPower();
            end(run, run.ends().from(), expected, facts);
            end(run, run.ends().to(), expected, facts);
        }
    }

    private void end(Run run, Run.End end, boolean expected, Consumer<Fact> facts) {
        if (!expected && !end.method().isGiven()) {
            return;
        }
        Shown<Boolean> crimped = end.method().map(model.limit("crimp-methods").words()::contains);
        Shown<Boolean> barrel = end.method().map(method -> !model.limit("joins-without-terminal").words().contains(method));
        Shown<Boolean> atHand = end.tool().with(model.job.plan().shopTools(), (tool, tools) -> tools.contains(tool));
        Shown<Boolean> matches = end.method().with(end.tool(), (method, tool) ->
                !model.limit("crimp-methods").words().contains(method) || model.limit("tools-" + method).words().contains(tool));
        facts.accept(new RunEnd(end.path(), end.at(), Shown.of(!model.job.isFactory(run)), end.method(), barrel,
                crimped, end.tool(), atHand, matches, end.takes(), end.takes().with(run.size(), String::equals)));
    }
}
