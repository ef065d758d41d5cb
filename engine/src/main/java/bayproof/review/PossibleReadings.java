package bayproof.review;

import bayproof.facts.Numbers;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Problem;
import bayproof.read.Setting;
import bayproof.read.UnderLoad;
import bayproof.read.UnusableInput;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Refuses readings that the physics of this very job rules out: what only the figures that were worked out can tell. */
final class PossibleReadings {
    private final Job job;
    private final Map<String, Numbers.Figure> figures;
    private final List<Problem> problems = new ArrayList<>();

    private PossibleReadings(Job job, Map<String, Numbers.Figure> figures) {
        this.job = job;
        this.figures = figures;
    }

    /**
     * Looks at every reading that has such a bound.
     *
     * @throws UnusableInput naming each that cannot be, with the reason
     */
    static void check(Job job, Map<String, Numbers.Figure> figures) throws UnusableInput {
        PossibleReadings readings = new PossibleReadings(job, figures);
        for (Item.Amplifier amplifier : job.itemsOf(Item.Amplifier.class)) {
            UnderLoad load = amplifier.underLoad();
            readings.drop(load, "feed", load.feedVolts(), amplifier.at());
            readings.drop(load, "ground", load.groundVolts(), amplifier.at());
        }
        job.plan().settings().values().forEach(readings::output);
        if (!readings.problems.isEmpty()) {
            throw new UnusableInput(readings.problems);
        }
    }

    /** Volts over amperes is a resistance, and none is below that of its copper. */
    private void drop(UnderLoad load, String side, Shown<Double> volts, At at) {
        Numbers.Figure copper = figures.get(load.path() + "." + side + "-copper");
        if (copper != null && volts.isGiven() && volts.orElse(0.0) < copper.value() * job.limits().named("possible-copper-share").value()) {
            problems.add(new Problem(volts.atOr(at), load.path() + "." + side + "-drop cannot be " + print(volts.orElse(0.0)) + ": the copper of the wire alone loses "
                    + print(copper.value()) + " (" + copper.calculation() + ").", "Look at the range of both meters and at the length and size of the wire, and read drop and current "
                    + "at the same moment."));
        }
    }

    private void output(Setting setting) {
        Numbers.Figure full = figures.get(setting.path() + ".full-volts");
        Shown<Double> read = setting.gain().measuredVolts();
        double share = job.limits().named("possible-output-share").value();
        if (full != null && read.isGiven() && read.orElse(0.0) > full.value() * share) {
            problems.add(new Problem(read.atOr(setting.at()), setting.gain().path() + ".measured cannot be " + print(read.orElse(0.0)) + ": at its rated power the output has "
                    + print(full.value()) + " (" + full.calculation() + "), and clipped to the last it shows no more than " + print(full.value() * share) + ".",
                    "Look at the unit and at the range, read AC volts at the output itself, and read again."));
        }
    }

    private static String print(double volts) {
        return Units.print(volts, Dimension.VOLTAGE);
    }
}
