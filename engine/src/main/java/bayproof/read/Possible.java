package bayproof.read;

import bayproof.demand.Limit;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;

/** Refuses measured values that no vehicle can show: a slip of the unit or of the pen, told before anything is judged by it. */
final class Possible {
    private final Job job;
    private final Problems problems;

    Possible(Job job, Problems problems) {
        this.job = job;
        this.problems = problems;
    }

    void check() {
        for (Item.Amplifier amplifier : job.itemsOf(Item.Amplifier.class)) {
            UnderLoad load = amplifier.underLoad();
            volts(load.path() + ".feed-drop", load.feedVolts(), amplifier.at());
            volts(load.path() + ".ground-drop", load.groundVolts(), amplifier.at());
            celsius(load.path() + ".case", load.caseCelsius(), amplifier.at());
            double whole = load.feedVolts().with(load.groundVolts(), Double::sum).orElse(Double.POSITIVE_INFINITY);
            double joint = load.jointVolts().orElse(0.0);
            if (joint > whole) {
                problems.add(load.jointVolts().atOr(amplifier.at()), "one joint cannot lose " + print(joint, Dimension.VOLTAGE) + " where feed and ground of "
                        + amplifier.id() + " lose " + print(whole, Dimension.VOLTAGE) + " together.", "Read both again at the same current.");
            }
        }
        for (Item.Battery battery : job.itemsOf(Item.Battery.class)) {
            volts(battery.charging().path() + ".idle", battery.charging().idleVolts(), battery.at());
            volts(battery.charging().path() + ".idle-later", battery.charging().laterVolts(), battery.at());
            volts(battery.charging().path() + ".fast", battery.charging().fastVolts(), battery.at());
        }
        volts("check-in.battery", job.plan().checkIn().batteryVolts(), job.planAt());
        celsius("heat-soak.air", job.plan().heatSoak().airCelsius(), job.planAt());
        celsius("heat-soak.joint", job.plan().heatSoak().jointCelsius(), job.planAt());
        sleep(job.plan().sleep());
    }

    private void volts(String path, Shown<Double> value, At at) {
        within(path, value, "possible-supply-volts", Dimension.VOLTAGE, "a 12-volt supply", at);
    }

    private void celsius(String path, Shown<Double> value, At at) {
        within(path, value, "possible-celsius", Dimension.TEMPERATURE, "a part of a vehicle", at);
    }

    private void within(String path, Shown<Double> value, String name, Dimension dimension, String of, At at) {
        Limit limit = job.limits().named(name);
        double si = value.orElse(limit.low());
        if (si < limit.low() || si > limit.high()) {
            problems.add(value.atOr(at), path + " cannot be " + print(si, dimension) + ": " + of + " shows " + print(limit.low(), dimension) + " to "
                    + print(limit.high(), dimension) + ".", "Look at the unit and at the range the meter was set to, and read again.");
        }
    }

    private void sleep(SleepTest test) {
        double first = test.first().afterSeconds().orElse(0.0);
        double second = test.second().afterSeconds().orElse(first);
        double third = test.third().afterSeconds().orElse(Math.max(first, second));
        if (second < first || third < second) {
            problems.add(test.third().afterSeconds().atOr(test.at()), "the points of the sleep test do not follow one another in time.",
                    "Write first, second and third in the order they were read, each with the time since the vehicle was locked.");
        }
    }

    private static String print(double si, Dimension dimension) {
        return Units.print(si, dimension);
    }
}
