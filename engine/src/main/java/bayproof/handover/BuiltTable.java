package bayproof.handover;

import bayproof.facts.Numbers;
import bayproof.judge.Verdict;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Listening;
import bayproof.read.Plan;
import bayproof.read.Setting;
import bayproof.read.Taken;
import bayproof.read.UnderLoad;
import bayproof.review.Evaluation;
import bayproof.units.Dimension;
import bayproof.units.Quantity;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Window;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Planned against built: each reading beside the value it took the place of, and what was tried beside what was to be. */
final class BuiltTable {
    private static final String NONE = "none";

    private final Job job;
    private final Map<String, Numbers.Figure> figures;
    private final List<Window> assumed;
    private final List<Built> rows = new ArrayList<>();

    private BuiltTable(Evaluation built, Evaluation planned) {
        this.job = built.job();
        this.figures = planned.facts().numbers().all();
        this.assumed = planned.judgment().verdicts().stream().map(Verdict::windows).flatMap(List::stream).toList();
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
        table.job.plan().speakerWiring().values().forEach(table::wire);
        table.job.plan().settings().values().forEach(table::gain);
        table.words();
        return List.copyOf(table.rows);
    }

    /** Those that lie farthest from the plan, farthest first. */
    static List<Built> worst(List<Built> rows, int most) {
        return rows.stream().filter(row -> row.share() > 0).sorted(Comparator.comparingDouble(Built::share).reversed()).limit(most).toList();
    }

    // readings

    private void reading(Taken taken) {
        Quantity value = taken.value().orElse(null);
        if (value == null) {
            return;
        }
        String how = Stream.of(taken.counts() ? "" : "DOES NOT COUNT: " + taken.why(), taken.place().orElse(""), taken.state().orElse("").replace('-', ' '),
                taken.conditions().orElse(""), taken.instrument().orElse(""), taken.who().orElse(""), taken.when().orElse(""),
                taken.photo().map(photo -> "photo " + photo).orElse("")).filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
        double planned = planned(taken.of(), taken.replaced());
        String before = Double.isNaN(planned) ? window(taken.of()) : print(planned, value.dimension()) + (taken.replaced().isEmpty() ? " worked out" : "");
        add(taken.of(), before, planned, value.si(), value.dimension(), how);
    }

    /** The value that was written before, else the one that was worked out; not a number where neither was. */
    private double planned(String path, String replaced) {
        try {
            if (!replaced.isEmpty()) {
                return Units.parse(replaced).si();
            }
        } catch (UnitException e) {
            return Double.NaN;
        }
        int group = path.indexOf(".charging.");
        Numbers.Figure figure = group > 0 ? figures.get(path.substring(0, group) + ".charging-volts")
                : path.equals("sleep.third.current") ? standby() : null;
        return figure == null ? Double.NaN : figure.value();
    }

    /** Standby current of the battery the engine starts from. */
    private Numbers.Figure standby() {
        return figures.entrySet().stream().filter(one -> one.getKey().startsWith("supply.sources.") && one.getKey().endsWith(".standby"))
                .map(Map.Entry::getValue).findFirst().orElse(null);
    }

    private String window(String path) {
        return assumed.stream().filter(window -> window.path().equals(path) || window.paths().contains(path)).findFirst()
                .map(window -> "assumed " + Units.print(window.low(), dimension(window)) + " to " + Units.print(window.high(), dimension(window))).orElse("");
    }

    private Dimension dimension(Window window) {
        return Dimension.ofSymbol(Objects.requireNonNull(job.limits().named(window.limit()).unit()));
    }

    private void add(String what, String before, double planned, double value, Dimension dimension, String how) {
        boolean comparable = !Double.isNaN(planned);
        double difference = value - planned;
        rows.add(new Built(what, before, print(value, dimension), comparable ? (difference > 0 ? "+" : "") + print(difference, dimension) : "",
                comparable && planned != 0 ? Math.abs(difference / planned) : 0, how));
    }

    private static String print(double si, Dimension dimension) {
        return Units.print(si, dimension);
    }

    // groups that were measured as a whole

    private void underLoad(Item.Amplifier amplifier) {
        UnderLoad load = amplifier.underLoad();
        Numbers.Figure share = figures.get(amplifier.path() + ".drop-loud-programme");
        Shown<Double> drop = load.feedVolts().with(load.groundVolts(), Double::sum);
        String how = load.amperes().map(amperes -> "at " + print(amperes, Dimension.CURRENT) + ", ").orElse("") + taking(load.taking().instrument(), load.taking().who(),
                load.taking().when());
        if (drop.isGiven()) {
            double planned = share == null ? Double.NaN : share.value() * job.limits().named("drop-reference").value();
            add(load.path() + ", feed and ground drop", share == null ? "" : print(planned, Dimension.VOLTAGE) + " worked out", planned, drop.orElse(0.0),
                    Dimension.VOLTAGE, how);
        }
        limited(load.path() + ".joint-drop", "drop-at-joint", load.jointVolts(), Dimension.VOLTAGE, how);
        limited(load.path() + ".case", "case-temperature", load.caseCelsius(), Dimension.TEMPERATURE, how);
    }

    private void limited(String what, String limit, Shown<Double> value, Dimension dimension, String how) {
        if (value.isGiven() && !job.taken().containsKey(what)) {
            rows.add(new Built(what, "at most " + print(job.limits().named(limit).value(), dimension), print(value.orElse(0.0), dimension), "", 0, how));
        }
    }

    private void charging(Item.Battery battery) {
        String path = battery.charging().path();
        String how = taking(battery.charging().taking().instrument(), battery.charging().taking().who(), battery.charging().taking().when());
        charging(path + ".idle", battery.charging().idleVolts(), how);
        charging(path + ".idle-later", battery.charging().laterVolts(), how);
        charging(path + ".fast", battery.charging().fastVolts(), how);
    }

    private void charging(String path, Shown<Double> volts, String how) {
        if (volts.isGiven() && !job.taken().containsKey(path)) {
            double planned = planned(path, "");
            add(path, Double.isNaN(planned) ? "" : print(planned, Dimension.VOLTAGE) + " worked out", planned, volts.orElse(0.0), Dimension.VOLTAGE, how);
        }
    }

    private static String taking(Shown<String> instrument, Shown<String> who, Shown<String> when) {
        return Stream.of(instrument, who, when).map(word -> word.orElse("")).filter(word -> !word.isEmpty()).collect(Collectors.joining(", "));
    }

    private void wire(Plan.Wiring wiring) {
        Numbers.Figure least = figures.get(wiring.path() + ".reads-least");
        Numbers.Figure most = figures.get(wiring.path() + ".reads-most");
        if (wiring.readOhms().isGiven() && least != null && most != null) {
            double read = wiring.readOhms().orElse(0.0);
            double nearest = Math.max(least.value(), Math.min(most.value(), read));
            rows.add(new Built(wiring.path() + ".resistance", print(least.value(), Dimension.RESISTANCE) + " to " + print(most.value(), Dimension.RESISTANCE)
                    + " worked out", print(read, Dimension.RESISTANCE), read == nearest ? "within" : print(read - nearest, Dimension.RESISTANCE),
                    Math.abs(read - nearest) / nearest, "at the amplifier, plug off"));
        }
    }

    private void gain(Setting setting) {
        if (setting.gain().measuredVolts().isGiven() && setting.gain().targetVolts().isGiven()) {
            double target = setting.gain().targetVolts().orElse(0.0);
            add(setting.gain().path() + ", AC volts", print(target, Dimension.VOLTAGE), target, setting.gain().measuredVolts().orElse(0.0), Dimension.VOLTAGE, "speakers off");
        }
    }

    // words

    private void words() {
        Plan plan = job.plan();
        word("fault codes", plan.checkIn().faultCodes(), plan.delivered().faultCodes());
        word("warning lamps", plan.checkIn().lamps(), plan.delivered().lamps());
        for (Listening.Heard heard : plan.listening().all()) {
            String result = heard.result().orElse("");
            if (!result.isEmpty()) {
                rows.add(new Built(heard.path(), "not heard", result.replace('-', ' '), result.equals("not-heard") ? "as planned" : "heard", 0,
                        heard.word().map(word -> word.evidence() + ", " + word.who() + ", " + word.when()).orElse("")));
            }
        }
    }

    private void word(String what, Shown<List<String>> before, Shown<List<String>> after) {
        if (before.isGiven() && after.isGiven()) {
            List<String> fresh = after.orElse(List.of()).stream().filter(one -> !before.orElse(List.of()).contains(one)).toList();
            rows.add(new Built(what, said(before), said(after), fresh.isEmpty() ? "none new" : "new: " + String.join(", ", fresh), 0, "before and after the job"));
        }
    }

    private static String said(Shown<List<String>> words) {
        return words.orElse(List.of()).isEmpty() ? NONE : String.join(", ", words.orElse(List.of()));
    }
}
