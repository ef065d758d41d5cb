package bayproof.handover;

import bayproof.facts.Numbers;
import bayproof.judge.Verdict;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.Setting;
import bayproof.read.UnderLoad;
import bayproof.review.Evaluation;
import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;

/**
 * What was planned, worked out, allowed or assumed for each value that can be measured, by its path: from the job as it
 * was before anybody measured.
 */
final class PlannedValues {
    private static final String WORKED_OUT = " worked out";

    private final Job job;
    private final Map<String, Numbers.Figure> figures;
    private final List<Window> assumed;
    private final Map<String, Supplier<Planned>> byPath = new HashMap<>();

    /**
     * @param built   the job as it stands
     * @param planned the same without its readings
     */
    PlannedValues(Evaluation built, Evaluation planned) {
        this.job = built.job();
        this.figures = planned.facts().numbers().all();
        this.assumed = planned.judgment().verdicts().stream().map(Verdict::windows).flatMap(List::stream).toList();
        job.itemsOf(Item.Amplifier.class).forEach(this::underLoad);
        job.itemsOf(Item.Alternator.class).forEach(one -> byPath.put(one.path() + ".idle-output", () -> idleOutput(one)));
        for (String point : List.of("first", "second", "third")) {
            byPath.put("sleep." + point + ".current", this::standby);
        }
        byPath.put("heat-soak.joint", this::joint);
        job.plan().speakerWiring().values().forEach(wiring -> byPath.put(wiring.path() + ".resistance", () -> lead(wiring)));
        for (Setting setting : job.plan().settings().values()) {
            byPath.put(setting.gain().path() + ".measured", () -> setting.gain().targetVolts().isGiven()
                    ? Planned.figure(setting.gain().targetVolts().orElse(0.0), Dimension.VOLTAGE, "") : Planned.NOTHING);
        }
    }

    /** What was planned for the value at a path. */
    Planned of(String path) {
        int group = path.indexOf(".charging.");
        if (group > 0) {
            return workedOut(path.substring(0, group) + ".charging-volts");
        }
        Supplier<Planned> known = byPath.get(path);
        return known == null ? window(path) : known.get();
    }

    /** The most that feed and ground together lose, at the current that flowed while it was measured; windows are at their bad ends. */
    Planned drop(Item.Amplifier amplifier) {
        Numbers.Figure share = figures.get(amplifier.path() + ".drop-loud-programme");
        Numbers.Figure loud = figures.get(amplifier.path() + ".draw-loud-programme");
        if (share == null || loud == null || loud.value() == 0) {
            return Planned.NOTHING;
        }
        return amplifier.underLoad().amperes().map(amperes -> Planned.atMost(share.value() * job.limits().named("drop-reference").value() * amperes / loud.value(),
                Dimension.VOLTAGE, WORKED_OUT + " at that current")).orElse(Planned.NOTHING);
    }

    private Planned workedOut(String path) {
        Numbers.Figure figure = figures.get(path);
        return figure == null ? Planned.NOTHING : Planned.figure(figure.value(), figure.dimension(), WORKED_OUT);
    }

    /** Standby current of the battery the engine starts from. */
    private Planned standby() {
        return figures.keySet().stream().filter(path -> path.startsWith("supply.sources.") && path.endsWith(".standby")).findFirst()
                .map(this::workedOut).orElse(Planned.NOTHING);
    }

    private void underLoad(Item.Amplifier amplifier) {
        UnderLoad load = amplifier.underLoad();
        byPath.put(load.path() + ".joint-drop", () -> bound("drop-at-joint", Dimension.VOLTAGE));
        byPath.put(load.path() + ".ground-drop", () -> bound("drop-at-ground", Dimension.VOLTAGE));
        byPath.put(load.path() + ".case", () -> bound("case-temperature", Dimension.TEMPERATURE));
    }

    private Planned bound(String limit, Dimension dimension) {
        return Planned.atMost(job.limits().named(limit).value(), dimension, "");
    }

    private Planned joint() {
        double rise = job.limits().named("joint-rise").value();
        return job.plan().heatSoak().airCelsius().map(air -> Planned.atMost(air + rise, Dimension.TEMPERATURE, ", air and "
                + Planned.print(rise, Dimension.TEMPERATURE))).orElse(Planned.NOTHING);
    }

    private Planned lead(Plan.Wiring wiring) {
        Numbers.Figure least = figures.get(wiring.path() + ".reads-least");
        Numbers.Figure most = figures.get(wiring.path() + ".reads-most");
        return least == null || most == null ? Planned.NOTHING : Planned.range(least.value(), most.value(), Dimension.RESISTANCE, WORKED_OUT);
    }

    /** It is assumed as a share of the rated output. */
    private Planned idleOutput(Item.Alternator alternator) {
        Shown<Double> rated = alternator.ratedAmperes();
        Window window = windowAt(alternator.path() + ".idle-output");
        return window == null ? Planned.NOTHING : rated.map(amperes -> Planned.range(window.low() * amperes, window.high() * amperes, Dimension.CURRENT,
                " assumed")).orElse(Planned.NOTHING);
    }

    private Planned window(String path) {
        Window window = windowAt(path);
        return window == null ? Planned.NOTHING : Planned.range(window.low(), window.high(),
                Dimension.ofSymbol(Objects.requireNonNull(job.limits().named(window.limit()).unit())), " assumed");
    }

    private Window windowAt(String path) {
        return assumed.stream().filter(window -> window.path().equals(path) || window.paths().contains(path)).findFirst().orElse(null);
    }
}
