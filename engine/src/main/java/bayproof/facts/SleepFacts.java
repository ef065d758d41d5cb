package bayproof.facts;

import bayproof.demand.Limit;
import bayproof.read.SleepTest;
import bayproof.read.Vehicle;
import bayproof.units.Dimension;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SleepReading;
import bayproof.vocabulary.Window;
import bayproof.vocabulary.Windows;
import java.util.List;
import java.util.function.Consumer;

/** Facts about the sleep test of the finished vehicle: whether it slept, and what it drew then. */
final class SleepFacts {
    private final Model model;
    private final Measured measured;
    private final SleepTest test;
    private final Vehicle.Supply supply;

    SleepFacts(Model model, Measured measured) {
        this.model = model;
        this.measured = measured;
        this.test = model.job.plan().sleep();
        this.supply = model.job.vehicle().supply();
    }

    void collect(Consumer<Fact> facts) {
        Shown<Double> first = amperes(test.first());
        Shown<Double> second = amperes(test.second());
        Shown<Double> third = amperes(test.third());
        for (SleepTest.Point point : List.of(test.first(), test.second(), test.third())) {
            if (point.afterSeconds().isGiven()) {
                model.numbers.put(point.path() + ".after", point.afterSeconds().orElse(0.0), Dimension.TIME, () -> "since the vehicle was locked");
            }
        }
        Shown<Double> fall = first.with(second, (one, two) -> two).with(third, (before, last) -> before > 0 ? Math.max(0, (before - last) / before) : 0.0);
        facts.accept(new SleepReading(test.path(), test.at(), test.latches(), test.keyMetres(), test.meter(),
                share(test.third().afterSeconds(), supply.sleepSeconds(), "sleep-time", "sleep-wait", Dimension.TIME), fall,
                share(asleepAfter(List.of(test.first(), test.second(), test.third()), List.of(first, second, third), 0), supply.sleepSeconds(), "sleep-time",
                        "sleep-wait", Dimension.TIME),
                share(third, supply.standbyLimitAmperes(), "standby-limit", "standby-usual", Dimension.CURRENT)));
    }

    /** The time of the first point at which the current was no more than is allowed. */
    private Shown<Double> asleepAfter(List<SleepTest.Point> points, List<Shown<Double>> amperes, int from) {
        if (from == points.size()) {
            return new Shown.Collapsed<>("at no point of the test did the vehicle draw as little as is allowed");
        }
        double most = supply.standbyLimitAmperes().orElse(model.limit("standby-usual").low());
        return amperes.get(from).then(drawn -> drawn <= most ? points.get(from).afterSeconds() : asleepAfter(points, amperes, from + 1));
    }

    private Shown<Double> amperes(SleepTest.Point point) {
        return measured.value(point.path(), "current", point.amperes(), test.taking());
    }

    /** A value as a share of the vehicle maker's figure, or of the usual one where that is not known. */
    private Shown<Double> share(Shown<Double> value, Shown<Double> figure, String key, String usual, Dimension dimension) {
        if (figure.isGiven() || !value.isGiven()) {
            return figure.isGiven() ? value.with(figure, (one, whole) -> new double[] {one, whole})
                    .then(pair -> Shown.of(pair[0] / pair[1], () -> working(pair[0], pair[1], dimension))) : value;
        }
        Limit limit = model.limit(usual);
        double one = value.orElse(0.0);
        // What is bad for a wait, a long sleep time, is the high end; for a current, a low allowance: both ends are one figure here.
        return new Shown.Assumed<>(one / limit.low(), one / limit.high(), Windows.unweighed(List.of(new Window(supply.path() + "." + key, limit.name(),
                limit.low(), limit.high(), 0))), () -> working(one, limit.low(), dimension));
    }

    private static String working(double value, double whole, Dimension dimension) {
        return Model.print(value, dimension) + ", over " + Model.print(whole, dimension);
    }
}
