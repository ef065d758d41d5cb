package bayproof.handover;

import bayproof.judge.Verdict;
import bayproof.read.HeatSoak;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.Setting;
import bayproof.read.SleepTest;
import bayproof.read.Taken;
import bayproof.read.Taking;
import bayproof.read.UnderLoad;
import bayproof.review.AcceptedValue;
import bayproof.review.Evaluation;
import bayproof.units.Dimension;
import bayproof.units.Quantity;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Planned against built: each measured value beside the one it took the place of or was to have, and what was tried beside what was to be. */
final class BuiltTable {
    private final Job job;
    private final PlannedValues planned;
    private final Map<String, List<Verdict>> verdicts;
    private final List<Built> rows = new ArrayList<>();

    private BuiltTable(Evaluation built, Evaluation planned) {
        this.job = built.job();
        this.planned = new PlannedValues(built, planned);
        this.verdicts = built.judgment().verdicts().stream().filter(verdict -> verdict.measured() != null).collect(Collectors.groupingBy(Verdict::subject));
    }

    /**
     * The rows, readings first.
     *
     * @param built   the job as it stands
     * @param planned the same without its readings
     */
    static List<Built> of(Evaluation built, Evaluation planned) {
        BuiltTable table = new BuiltTable(built, planned);
        table.job.taken().values().forEach(table::reading);
        table.job.itemsOf(Item.Amplifier.class).forEach(table::underLoad);
        table.job.itemsOf(Item.Battery.class).forEach(table::charging);
        table.sleep(table.job.plan().sleep());
        table.soak(table.job.plan().heatSoak());
        table.job.plan().speakerWiring().values().forEach(table::wire);
        table.job.plan().settings().values().forEach(table::gain);
        table.rows.addAll(BuiltWords.of(table.job));
        return List.copyOf(table.rows);
    }

    /** Those that lie farthest from the plan, farthest first. */
    static List<Built> worst(List<Built> rows, int most) {
        return rows.stream().filter(row -> row.share() > 0).sorted(Comparator.comparingDouble(Built::share).reversed()).limit(most).toList();
    }

    private void add(String what, Planned planned, double value, Dimension dimension, String how) {
        rows.add(new Built(what, planned.text(), print(value, dimension), planned.difference(value, dimension), limit(what, print(value, dimension)),
                stillFalls(what) ? 0 : planned.share(value), how));
    }

    /** The points of a sleep test before the last one lie above it as they should. */
    private boolean stillFalls(String path) {
        SleepTest sleep = job.plan().sleep();
        return path.startsWith(sleep.first().path() + ".") || path.startsWith(sleep.second().path() + ".");
    }

    /** The limit of a verdict that judges this very value. */
    private String limit(String path, String value) {
        for (int end = path.length(); end > 0; end = path.lastIndexOf('.', end - 1)) {
            for (Verdict verdict : verdicts.getOrDefault(path.substring(0, end), List.of())) {
                if (value.equals(AcceptedValue.of(verdict)) && AcceptedValue.limit(verdict) != null) {
                    return AcceptedValue.limit(verdict);
                }
            }
        }
        return "";
    }

    private static String print(double si, Dimension dimension) {
        return Units.print(si, dimension);
    }

    // readings

    private void reading(Taken taken) {
        Quantity value = taken.value().orElse(null);
        if (value == null) {
            return;
        }
        String how = said(taken.counts() ? "" : "DOES NOT COUNT: " + taken.why(), taken.place().orElse(""), taken.state().orElse("").replace('-', ' '),
                taken.conditions().orElse(""), conditions(taken.of()), taken.instrument().orElse(""), taken.who().orElse(""), taken.when().orElse(""),
                taken.photo().map(photo -> "photo " + photo).orElse(""));
        add(taken.of(), replaced(taken, value.dimension()), value.si(), value.dimension(), how);
    }

    /** The value that was written before, else what was planned. */
    private Planned replaced(Taken taken, Dimension dimension) {
        try {
            return taken.replaced().isEmpty() ? planned.of(taken.of()) : Planned.figure(Units.parse(taken.replaced()).si(), dimension, "");
        } catch (UnitException e) {
            return Planned.NOTHING;
        }
    }

    /** What the plan says of how a value was measured, beside what its reading says. */
    private String conditions(String path) {
        SleepTest sleep = job.plan().sleep();
        for (SleepTest.Point point : List.of(sleep.first(), sleep.second(), sleep.third())) {
            if (path.startsWith(point.path() + ".")) {
                return said(word(point.afterSeconds(), Dimension.TIME, " after it was locked"), sleep.latches().map(latches -> "latches " + latches).orElse(""),
                        word(sleep.keyMetres(), Dimension.LENGTH, " to the key"), sleep.meter().map(meter -> "meter " + meter.replace('-', ' ')).orElse(""));
            }
        }
        return path.startsWith(job.plan().heatSoak().path() + ".") ? word(job.plan().heatSoak().playSeconds(), Dimension.TIME, " of loud play") : "";
    }

    private static String word(Shown<Double> value, Dimension dimension, String after) {
        return value.map(si -> print(si, dimension) + after).orElse("");
    }

    private static String said(String... words) {
        return Stream.of(words).filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
    }

    // what stands in the plan with its instrument and its name

    private void written(String path, Shown<Double> value, Dimension dimension, String how) {
        if (value.isGiven() && !job.taken().containsKey(path)) {
            add(path, planned.of(path), value.orElse(0.0), dimension, said(conditions(path), how));
        }
    }

    private static String taking(Taking taking) {
        return said(taking.instrument().orElse(""), taking.who().orElse(""), taking.when().orElse(""));
    }

    private void underLoad(Item.Amplifier amplifier) {
        UnderLoad load = amplifier.underLoad();
        String how = said(load.amperes().map(amperes -> "at " + print(amperes, Dimension.CURRENT)).orElse(""), taking(load.taking()));
        Shown<Double> drop = load.feedVolts().with(load.groundVolts(), Double::sum);
        if (drop.isGiven()) {
            double value = drop.orElse(0.0);
            Planned at = planned.drop(amplifier);
            rows.add(new Built(load.path() + ", feed and ground drop", at.text(), print(value, Dimension.VOLTAGE), at.difference(value, Dimension.VOLTAGE),
                    print(job.limits().named("drop-loud-programme").value() * job.limits().named("drop-reference").value(), Dimension.VOLTAGE)
                            + " at the loud programme", at.share(value), how));
        }
        written(load.path() + ".ground-drop", load.groundVolts(), Dimension.VOLTAGE, how);
        written(load.path() + ".joint-drop", load.jointVolts(), Dimension.VOLTAGE, how);
        written(load.path() + ".case", load.caseCelsius(), Dimension.TEMPERATURE, how);
    }

    private void charging(Item.Battery battery) {
        String path = battery.charging().path();
        String how = taking(battery.charging().taking());
        written(path + ".idle", battery.charging().idleVolts(), Dimension.VOLTAGE, how);
        written(path + ".idle-later", battery.charging().laterVolts(), Dimension.VOLTAGE, how);
        written(path + ".fast", battery.charging().fastVolts(), Dimension.VOLTAGE, how);
    }

    private void sleep(SleepTest sleep) {
        for (SleepTest.Point point : List.of(sleep.first(), sleep.second(), sleep.third())) {
            written(point.path() + ".current", point.amperes(), Dimension.CURRENT, taking(sleep.taking()));
        }
    }

    private void soak(HeatSoak soak) {
        written(soak.path() + ".air", soak.airCelsius(), Dimension.TEMPERATURE, taking(soak.taking()));
        written(soak.path() + ".joint", soak.jointCelsius(), Dimension.TEMPERATURE, taking(soak.taking()));
    }

    private void wire(Plan.Wiring wiring) {
        written(wiring.path() + ".resistance", wiring.readOhms(), Dimension.RESISTANCE, "at the amplifier, plug off");
    }

    private void gain(Setting setting) {
        Function<Double, String> tone = hertz -> print(hertz, Dimension.FREQUENCY) + setting.gain().level().map(level -> " at " + print(level, Dimension.LEVEL) + " full scale").orElse("");
        written(setting.gain().path() + ".measured", setting.gain().measuredVolts(), Dimension.VOLTAGE, setting.gain().toneHertz().map(tone).orElse(""));
    }
}
