package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.read.Studs;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.RunEnd;
import bayproof.vocabulary.Shown;
import java.util.Locale;
import java.util.function.Consumer;

/** Facts about the ends of runs. */
final class TerminationFacts {
    private final Model model;
    private final CalibrationFacts calibration;

    TerminationFacts(Model model) {
        this.model = model;
        this.calibration = new CalibrationFacts(model);
    }

    /** Signal and speaker cables come with their plugs: their ends are looked at where the plan speaks of them. */
    void collect(Consumer<Fact> facts) {
        for (Run run : model.job.runs().values()) {
            boolean expected = !model.job.isFactory(run) && model.wiring.role(run).isPower();
            end(run, run.ends().from(), run.from(), expected, facts);
            end(run, run.ends().to(), run.to(), expected, facts);
        }
    }

    private void end(Run run, Run.End end, Shown<String> at, boolean expected, Consumer<Fact> facts) {
        if (!expected && !end.method().isGiven()) {
            return;
        }
        Shown<Boolean> crimped = end.method().map(model.limit("crimp-methods").words()::contains);
        Shown<Boolean> barrel = end.method().map(method -> !model.limit("joins-without-terminal").words().contains(method));
        Shown<Boolean> atHand = end.tool().with(model.job.plan().shopTools(), (tool, tools) -> tools.contains(tool))
                .with(calibration.reliable(end.tool(), model.job.plan().job().date(), "job.date", end.at()), (has, holds) -> has);
        Shown<Boolean> matches = end.method().with(end.tool(), (method, tool) ->
                !model.limit("crimp-methods").words().contains(method) || model.limit("tools-" + method).words().contains(tool));
        facts.accept(new RunEnd(end.path(), end.at(), Shown.of(!model.job.isFactory(run)), end.method(), barrel,
                crimped, end.tool(), atHand, matches, end.takes(), end.takes().with(run.size(), String::equals),
                at.map(terminal -> studs(terminal) != null), meets(end, at), end.terminal().with(stud(at), (terminal, stud) -> terminal + " on " + stud)));
    }

    // what the terminal meets

    private Studs studs(String terminal) {
        Item item = model.job.itemOf(terminal);
        return item == null ? null : item.studs();
    }

    private Shown<String> stud(Shown<String> at) {
        return at.then(terminal -> studs(terminal) == null ? Shown.of("nothing") : studs(terminal).of(terminal.substring(terminal.indexOf('.') + 1)));
    }

    /** Rings and forks carry the thread they are made for in their name; a clamp takes what has no hole. */
    private Shown<Boolean> meets(Run.End end, Shown<String> at) {
        return end.terminal().with(stud(at), (terminal, stud) -> {
            boolean holed = terminal.startsWith("ring-") || terminal.startsWith("fork-");
            return stud.equals("clamp") ? !holed && !terminal.equals("plug") : holed ? terminal.endsWith("-" + stud.toLowerCase(Locale.ROOT)) : terminal.equals(stud);
        });
    }
}
