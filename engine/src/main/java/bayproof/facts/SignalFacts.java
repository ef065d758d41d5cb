package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.graph.Role;
import bayproof.read.Item;
import bayproof.read.LineSignal;
import bayproof.read.Plan;
import bayproof.read.Run;
import bayproof.read.Setting;
import bayproof.solve.Sums;
import bayproof.solve.sound.Hearing;
import bayproof.solve.sound.Levels;
import bayproof.solve.sound.SignalChain;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.GainSetting;
import bayproof.vocabulary.GainStructure;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SignalInput;
import bayproof.vocabulary.SoundExposure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about the signal on its way: what arrives at each input, how each gain is set, and what people hear of it meanwhile. */
final class SignalFacts {
    private final Model model;
    private final Outputs outputs;
    private final List<Run> runs;

    SignalFacts(Model model, Outputs outputs) {
        this.model = model;
        this.outputs = outputs;
        this.runs = model.job.runs().values().stream().filter(run -> model.wiring.role(run) == Role.SIGNAL)
                .filter(run -> mostInputVolts(input(run)) != null).toList();
    }

    void collect(Consumer<Fact> facts) {
        for (Run run : runs) {
            Shown<Double> present = presentVolts(run);
            Shown<Double> most = mostInputVolts(input(run));
            note(run.path() + ".room", most.with(present, Levels::decibels), Dimension.LEVEL, () -> "20 log10(most the input takes / what arrives)");
            facts.accept(new SignalInput(run.path(), run.at(), present, most));
        }
        Shown<Double> highest = Shown.of(Double.NEGATIVE_INFINITY);
        Shown<Double> lowest = Shown.of(Double.POSITIVE_INFINITY);
        for (Output output : outputs.all()) {
            GainSetting gain = gain(output);
            facts.accept(gain);
            highest = highest.with(gain.level(), Math::max);
            lowest = lowest.with(gain.level(), Math::min);
        }
        if (!outputs.all().isEmpty()) {
            facts.accept(new GainStructure("settings", model.job.planAt(), highest.with(lowest, (high, low) -> high - low)));
        }
        exposure(facts);
    }

    // links

    /** The end at which a signal run arrives. A run is written from its source on, or the other way round. */
    private String input(Run run) {
        return isSource(run.to().orElse("")) && !isSource(run.from().orElse("")) ? run.from().orElse("") : run.to().orElse("");
    }

    private String source(Run run) {
        return input(run).equals(run.to().orElse("")) ? run.from().orElse("") : run.to().orElse("");
    }

    /** An amplifier is never the source of a signal, and an interface never takes one. */
    private boolean isSource(String terminal) {
        return model.job.itemOf(terminal) instanceof Item.Interface
                || model.job.itemOf(terminal) instanceof Item.Processor && terminal.contains(".out-");
    }

    /** The most an input takes; null where the terminal belongs to nothing that a signal enters. */
    private Shown<Double> mostInputVolts(String terminal) {
        Item item = model.job.itemOf(terminal);
        LineSignal line = LineSignal.of(item);
        return item instanceof Item.Amplifier amplifier ? amplifier.input().mostInputVolts() : line == null ? null : line.mostInputVolts();
    }

    /** Greatest clean volts that a run brings: what its source is set to, else the most it gives. */
    private Shown<Double> presentVolts(Run run) {
        String source = source(run);
        Shown<Double> asked = outputs.askedVolts(source);
        if (asked.isGiven()) {
            return asked;
        }
        LineSignal line = LineSignal.of(model.job.itemOf(source));
        return line == null ? Shown.missing(new Need(run.path() + ".from", "the source of the signal in " + run.id(), run.at())) : line.outputVolts();
    }

    // gains

    private GainSetting gain(Output output) {
        String terminal = output.wiring().id();
        Setting setting = outputs.setting(terminal);
        Setting.Gain gain = setting == null ? null : setting.gain();
        Shown<Double> target = outputs.set(terminal, gain == null ? null : gain.targetVolts(), "gain.target", "AC volts to be set at the output");
        Shown<Double> tone = outputs.set(terminal, gain == null ? null : gain.toneHertz(), "gain.tone", "frequency of the test tone");
        Shown<Double> level = outputs.set(terminal, gain == null ? null : gain.level(), "gain.level", "level of the test tone against full scale");
        Shown<Double> read = outputs.set(terminal, gain == null ? null : gain.measuredVolts(), "gain.measured", "AC volts measured at the output");
        Shown<Double> asked = outputs.askedVolts(terminal);
        Shown<Double> full = Amplifiers.fullVolts(output.amplifier(), output.bridged());
        Shown<Double> arrives = arrives(output);
        Shown<Double> decibels = asked.with(arrives, Levels::decibels).then(value -> Shown.of(value, () -> "20 log10("
                + Model.print(asked.orElse(0.0), Dimension.VOLTAGE) + " / " + Model.print(arrives.orElse(0.0), Dimension.VOLTAGE) + ")"));
        note("settings." + terminal + ".target", target, Dimension.VOLTAGE, () -> "as planned, tone " + Model.print(tone.orElse(0.0), Dimension.FREQUENCY)
                + ", " + Model.print(level.orElse(0.0), Dimension.LEVEL) + " against full scale, speakers off");
        note("settings." + terminal + ".tone", tone, Dimension.FREQUENCY, () -> "as planned");
        note("settings." + terminal + ".gain-needed", decibels, Dimension.LEVEL, null);
        note("settings." + terminal + ".room", full.with(asked, Levels::decibels), Dimension.LEVEL, () -> "20 log10(volts at rated power / volts asked for at full scale)");
        note("settings." + terminal + ".full-volts", full, Dimension.VOLTAGE, null);
        Shown<SignalChain.Step> first = chain(output, asked, full).map(SignalChain::clipsFirst);
        note("settings." + terminal + ".room-of-way", first.map(SignalChain.Step::marginDecibels), Dimension.LEVEL, () -> first.map(SignalChain.Step::name).orElse("") + " clips first");
        Knob lower = target.isGiven() ? Ladders.knob(() -> tenthsBelow(target.orElse(0.0)), "settings", terminal, "gain", "target") : null;
        return new GainSetting("settings." + terminal, setting == null ? output.wiring().at() : setting.at(), target, tone, level, asked, full, decibels,
                full.with(output.amplifier().input().mostInputVolts(), Levels::decibels),
                full.with(output.amplifier().input().leastInputVolts(), Levels::decibels), read.with(target, Sums::share), first.map(SignalChain.Step::name), first.map(SignalChain.Step::marginDecibels), lower);
    }

    /** What arrives at the input of an output. */
    private Shown<Double> arrives(Output output) {
        Run run = arriving(output);
        return run != null ? presentVolts(run)
                : Shown.missing(new Need("runs", "the run that brings a signal to " + output.amplifier().id(), output.amplifier().at()));
    }

    /** The terminal that a signal comes from to an output; null where no run of the job brings one. */
    String sourceOf(Output output) {
        Run run = arriving(output);
        return run == null ? null : source(run);
    }

    /** The run into the input of an output: the one of its number, else the first of its amplifier; null where there is none. */
    private Run arriving(Output output) {
        String own = output.amplifier().id() + ".signal-" + output.wiring().id().replaceAll(".*-", "");
        List<Run> all = runs.stream().filter(run -> input(run).startsWith(output.amplifier().id() + ".")).toList();
        return all.stream().filter(run -> input(run).equals(own)).findFirst().or(() -> all.stream().max(louder())).orElse(null);
    }

    /** The run that fills its input the most, whatever the order of the plan; one of which too little is known goes before all. */
    private Comparator<Run> louder() {
        return Comparator.<Run>comparingDouble(run -> presentVolts(run).orElse(Double.MAX_VALUE))
                .thenComparingDouble(run -> -(mostInputVolts(input(run)) == null ? 0 : mostInputVolts(input(run)).orElse(0.0)))
                .thenComparingDouble(run -> LineSignal.of(model.job.itemOf(source(run))) == null ? Double.MAX_VALUE
                        : -LineSignal.of(model.job.itemOf(source(run))).outputVolts().orElse(0.0));
    }

    /** The way of a signal to an output, back through each device to the first one that no run of the job feeds. */
    private Shown<SignalChain> chain(Output output, Shown<Double> asked, Shown<Double> full) {
        Run run = arriving(output);
        if (run == null) {
            return arrives(output).map(volts -> new SignalChain(volts, List.of()));
        }
        Shown<List<SignalChain.Link>> links = Shown.of(List.of());
        Set<String> passed = new HashSet<>();
        Shown<Double> leaves = asked;
        Shown<Double> most = full;
        String name = output.wiring().id();
        for (Run into = run; into != null; into = into(source(run))) {
            links = before(link(name, into, leaves, most), links);
            run = into;
            leaves = presentVolts(run);
            Item device = model.job.itemOf(source(run));
            LineSignal line = LineSignal.of(device);
            if (line == null || !passed.add(device.id())) {
                break;
            }
            most = line.outputVolts();
            name = source(run);
        }
        return presentVolts(run).with(links, SignalChain::new);
    }

    /** The run that feeds the device of an output; null where none of the job does. Where several do, the one that fills its input the most. */
    private Run into(String out) {
        Item device = model.job.itemOf(out);
        return device == null ? null : runs.stream().filter(run -> model.job.itemOf(input(run)) == device).max(louder()).orElse(null);
    }

    private Shown<SignalChain.Link> link(String name, Run into, Shown<Double> leaves, Shown<Double> mostOut) {
        Shown<Double> arrives = presentVolts(into);
        return leaves.with(arrives, Levels::decibels).with(mostInputVolts(input(into)).with(mostOut, (in, out) -> new double[] {in, out}),
                (gain, most) -> new SignalChain.Link(name, most[0], gain, most[1]));
    }

    private static Shown<List<SignalChain.Link>> before(Shown<SignalChain.Link> link, Shown<List<SignalChain.Link>> links) {
        return link.with(links, (one, others) -> {
            List<SignalChain.Link> all = new ArrayList<>(List.of(one));
            all.addAll(others);
            return all;
        });
    }

    private static List<String> tenthsBelow(double volts) {
        List<String> ladder = new ArrayList<>();
        BigDecimal step = new BigDecimal("0.1");
        for (BigDecimal next = BigDecimal.valueOf(volts).subtract(step).setScale(1, RoundingMode.CEILING);
                next.signum() > 0 && ladder.size() < 3000; next = next.subtract(step)) {
            ladder.add(next.toPlainString() + " V");
        }
        return ladder;
    }

    private void note(String path, Shown<Double> value, Dimension dimension, java.util.function.Supplier<String> calculation) {
        if (value instanceof Shown.Given<Double> given) {
            model.numbers.put(path, given.value(), dimension, calculation == null ? given.calculation() : calculation);
        }
    }

    // hearing

    private void exposure(Consumer<Fact> facts) {
        List<String> loud = model.limit("loud-steps").words();
        List<Plan.Step> steps = model.job.plan().steps().values().stream().filter(step -> loud.contains(step.does().orElse(""))).toList();
        if (steps.isEmpty() || model.job.itemsOf(Item.Amplifier.class).isEmpty()) {
            return;
        }
        Shown<List<Hearing.Exposure>> heard = Shown.of(List.of());
        for (Plan.Step step : steps) {
            heard = heard.with(step.soundLevel().with(step.seconds(), Hearing.Exposure::new), (before, one) -> {
                List<Hearing.Exposure> more = new ArrayList<>(before);
                more.add(one);
                return more;
            });
        }
        facts.accept(new SoundExposure("steps", steps.get(0).at(), dose(heard, "law"), dose(heard, "health")));
    }

    private Shown<Double> dose(Shown<List<Hearing.Exposure>> heard, String rule) {
        Hearing.Criterion criterion = new Hearing.Criterion(model.value("hearing-level-" + rule), model.value("hearing-exchange-" + rule));
        Shown<Double> dose = heard.map(criterion::dose).then(value -> Shown.of(value, () -> "time at each level over the time allowed there"));
        note("steps.hearing-dose-" + rule, dose, Dimension.RATIO, null);
        return dose;
    }
}
