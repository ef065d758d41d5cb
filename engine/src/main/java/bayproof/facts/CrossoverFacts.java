package bayproof.facts;

import bayproof.facts.Outputs.Output;
import bayproof.read.Setting;
import bayproof.solve.acoustic.Band;
import bayproof.solve.acoustic.Crossing;
import bayproof.solve.acoustic.Filter;
import bayproof.solve.acoustic.Filter.Pass;
import bayproof.solve.sound.Delay;
import bayproof.units.Dimension;
import bayproof.vocabulary.BandCrossing;
import bayproof.vocabulary.DelayedOutput;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.SetFilter;
import bayproof.vocabulary.Shown;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Facts about the filters, the sums of neighboring bands and the delays of a system. */
final class CrossoverFacts {
    private static final double FINEST_HERTZ = 5;
    private static final double FINEST_SECONDS = 1e-5;
    private static final int MOST_STEPS = 2000;

    private final Model model;
    private final Outputs outputs;
    private final Bands bands;
    private final double metresPerSecond;

    CrossoverFacts(Model model, Outputs outputs) {
        this.model = model;
        this.outputs = outputs;
        this.bands = new Bands(model, outputs);
        this.metresPerSecond = Delay.metresPerSecond(model.value("cabin-temperature"));
    }

    void collect(Consumer<Fact> facts) {
        for (Output output : outputs.all()) {
            Setting setting = outputs.setting(output.wiring().id());
            if (setting != null) {
                filter(setting, "high-pass", setting.highPass(), facts);
                filter(setting, "low-pass", setting.lowPass(), facts);
            }
        }
        Set<Output> together = new LinkedHashSet<>();
        for (Output lower : outputs.all()) {
            crossings(lower, together, facts);
        }
        delays(together, facts);
    }

    private void filter(Setting setting, String pass, Setting.Filter filter, Consumer<Fact> facts) {
        if (Bands.isWritten(filter)) {
            facts.accept(new SetFilter(setting.path() + "." + pass, filter.at(), pass, filter.shape(), filter.order(),
                    filter.shape().with(filter.order(), (shape, order) -> Filter.exists(Bands.shape(shape), order))));
        }
    }

    /** An output whose speakers play only a part of the sound has a neighbor; one that says nothing of it is a subject as well. */
    private void crossings(Output lower, Set<Output> together, Consumer<Fact> facts) {
        String terminal = lower.wiring().id();
        Setting setting = outputs.setting(terminal);
        Shown<List<String>> above = outputs.set(terminal, setting == null ? null : setting.bandAbove(), "band-above", "outputs that play the band above on the same side");
        boolean part = outputs.speakersOf(lower).stream().anyMatch(speaker -> model.limit("part-range-speakers").words().contains(speaker.data().plays().orElse("")));
        if (!above.isGiven() && part) {
            Shown<Double> missing = above.map(x -> 0.0);
            facts.accept(new BandCrossing("settings." + terminal + ".band-above", lower.wiring().at(), missing, Shown.of(true), missing, missing, missing,
                    "the level of both bands together", null));
        }
        for (String id : above.orElse(List.of())) {
            Output upper = outputs.all().stream().filter(one -> one.wiring().id().equals(id)).findFirst().orElse(null);
            facts.accept(upper == null ? nothingThere(setting, id) : crossing(lower, upper, setting));
            if (upper != null) {
                together.add(lower);
                together.add(upper);
            }
        }
    }

    private BandCrossing nothingThere(Setting setting, String id) {
        Shown<Double> missing = Shown.missing(new Need("speaker-wiring." + id + ".net", "what hangs on " + id, setting.bandAbove().atOr(setting.at())));
        return new BandCrossing(setting.path() + ".band-above." + id, setting.at(), missing, Shown.of(true), missing, missing, missing, "the level of both bands together", null);
    }

    private BandCrossing crossing(Output lower, Output upper, Setting setting) {
        String subject = setting.path() + ".band-above." + upper.wiring().id();
        Gathered corners = new Gathered();
        Band plainLow = new Band(bands.filters(lower.wiring().id(), Pass.LOW, corners), false, 0);
        Band plainHigh = new Band(bands.filters(upper.wiring().id(), Pass.HIGH, corners), false, 0);
        Shown<Double> low = corners.then(() -> plainLow.cornerHertz(Pass.LOW));
        Shown<Double> high = corners.then(() -> plainHigh.cornerHertz(Pass.HIGH));
        Shown<Double> ratio = low.with(high, (down, up) -> rounded(Math.max(up / down, down / up))).then(value -> Shown.of(value,
                () -> hertz(high.orElse(0.0)) + " above and " + hertz(low.orElse(0.0)) + " below"));
        Gathered all = new Gathered();
        Band below = bands.band(lower, Pass.LOW, metresPerSecond, all);
        Band above = bands.band(upper, Pass.HIGH, metresPerSecond, all);
        Crossing crossing = new Crossing(below, above);
        Shown<Double> sum = all.then(() -> rounded(crossing.sumDecibels()), () -> "filters, leads, delays and ways of both; with the leads of one swapped "
                + Model.print(new Crossing(below, above.reversed()).sumDecibels(), Dimension.LEVEL));
        if (sum.isGiven()) {
            model.numbers.put(subject + ".sum", sum.orElse(0.0), Dimension.LEVEL, () -> "at " + hertz(crossing.hertz()));
        }
        return new BandCrossing(subject, setting.bandAbove().atOr(setting.at()), ratio, low.with(high, (down, up) -> up > down), low, high, sum,
                "the level of both bands together" + (sum.isGiven() ? " at " + hertz(crossing.hertz()) : ""), cornerTo(upper, low));
    }

    private static double rounded(double value) {
        return Math.rint(value * 1e6) / 1e6;
    }

    private static String hertz(double hertz) {
        return Model.print(hertz, Dimension.FREQUENCY);
    }

    /** Corners of the band above, the planned one's neighbors first, toward the corner of the band below. */
    private Knob cornerTo(Output upper, Shown<Double> low) {
        Setting setting = outputs.setting(upper.wiring().id());
        double planned = setting == null ? Double.NaN : setting.highPass().cornerHertz().orElse(Double.NaN);
        double target = low.orElse(Double.NaN);
        return Double.isNaN(planned) || Double.isNaN(target) || Double.isInfinite(target) ? null
                : Ladders.knob(() -> hertzToward(planned, target), "settings", setting.id(), "high-pass", "corner");
    }

    static List<String> hertzToward(double planned, double target) {
        List<String> ladder = new ArrayList<>();
        double step = Math.max(planned, target) > 500 ? 10 * FINEST_HERTZ : Math.max(planned, target) > 100 ? FINEST_HERTZ : 1;
        long from = Math.round(planned / step);
        long to = Math.round(target / step);
        for (long at = from; at != to && ladder.size() < MOST_STEPS;) {
            at += to > from ? 1 : -1;
            ladder.add(BigDecimal.valueOf(at * step).stripTrailingZeros().toPlainString() + " Hz");
        }
        return ladder;
    }

    private void delays(Set<Output> together, Consumer<Fact> facts) {
        Gathered ways = new Gathered();
        double farthest = 0;
        for (Output output : together) {
            farthest = Math.max(farthest, ways.number(bands.distanceMetres(output)));
        }
        // What is set at the farthest speaker is nobody's error: all may be late by the same.
        double start = Double.POSITIVE_INFINITY;
        for (Output output : together) {
            start = Math.min(start, ways.number(bands.delaySeconds(output.wiring().id())));
        }
        for (Output output : together) {
            facts.accept(delayed(output, ways, farthest, start));
        }
    }

    private DelayedOutput delayed(Output output, Gathered ways, double farthest, double start) {
        String terminal = output.wiring().id();
        double wanted = Delay.seconds(farthest, bands.distanceMetres(output).orElse(0.0), model.value("cabin-temperature")) + (Double.isInfinite(start) ? 0 : start);
        Shown<Double> set = bands.delaySeconds(terminal);
        Shown<Double> error = ways.then(() -> rounded(Math.abs(set.orElse(0.0) - wanted)), () -> "set " + Model.print(set.orElse(0.0), Dimension.TIME)
                + ", (" + Model.print(farthest, Dimension.LENGTH) + " - " + Model.print(bands.distanceMetres(output).orElse(0.0), Dimension.LENGTH) + ") / "
                + Model.print(metresPerSecond, Dimension.SPEED) + " = " + Model.print(wanted, Dimension.TIME));
        Setting setting = outputs.setting(terminal);
        Knob knob = setting == null || !set.isGiven() || !ways.complete() ? null : Ladders.knob(() -> delaysToward(set.orElse(0.0), wanted), "settings", terminal, "delay");
        return new DelayedOutput("settings." + terminal, setting == null ? output.wiring().at() : setting.at(), error, set, knob);
    }

    private static List<String> delaysToward(double planned, double target) {
        List<String> ladder = new ArrayList<>();
        long from = Math.round(planned / FINEST_SECONDS);
        long to = Math.round(target / FINEST_SECONDS);
        for (long at = from; at != to && ladder.size() < MOST_STEPS;) {
            at += to > from ? 1 : -1;
            ladder.add(BigDecimal.valueOf(at, 2).stripTrailingZeros().toPlainString() + " ms");
        }
        return ladder;
    }
}
