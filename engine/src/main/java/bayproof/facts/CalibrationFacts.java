package bayproof.facts;

import bayproof.read.Plan;
import bayproof.vocabulary.At;
import bayproof.vocabulary.CalibratedTool;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about the calibration of the shop's tools, and what rests on one that is past its date. */
final class CalibrationFacts {
    private static final String KEY = "calibrated-until";

    private final Model model;
    private final Plan plan;

    CalibrationFacts(Model model) {
        this.model = model;
        this.plan = model.job.plan();
    }

    void collect(Consumer<Fact> facts) {
        List<String> calibrated = model.limit("tools-with-calibration").words();
        Set<String> tools = new TreeSet<>(plan.shopTools().orElse(List.of()));
        plan.steps().values().forEach(step -> tools.addAll(step.tools().orElse(List.of())));
        tools.stream().filter(calibrated::contains).forEach(tool -> {
            Shown<String> until = until(tool);
            At at = until.atOr(plan.shopTools().atOr(model.job.planAt()));
            facts.accept(new CalibratedTool(KEY + "." + tool, at, holds(tool, plan.job().date(), "job.date", model.job.planAt()), until));
        });
    }

    private Shown<String> until(String tool) {
        Shown<String> until = plan.calibratedUntil().get(tool);
        return until != null ? until : Shown.missing(new Need(KEY + "." + tool, "day until which the calibration of " + tool + " holds",
                plan.shopTools().atOr(model.job.planAt())));
    }

    private Shown<Boolean> holds(String tool, Shown<String> when, String path, At at) {
        Shown<LocalDate> end = Days.day(until(tool), KEY + "." + tool, at);
        return end.with(Days.day(when, path, at), (last, day) -> !day.isAfter(last));
    }

    /** That a tool may be relied on at a time: missing where it was past its date then; a tool without a date is asked for elsewhere. */
    Shown<Boolean> reliable(Shown<String> tool, Shown<String> when, String path, At at) {
        String name = tool.orElse(null);
        if (name == null || !plan.calibratedUntil().containsKey(name)) {
            return Shown.of(true);
        }
        Shown<Boolean> holds = holds(name, when, path, at);
        return holds.orElse(true) ? Shown.of(true)
                : Shown.missing(new Need(KEY + "." + name, "a calibration of " + name + " that held on that day", at));
    }
}
