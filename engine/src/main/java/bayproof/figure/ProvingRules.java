package bayproof.figure;

import static bayproof.figure.Input.quantities;
import static bayproof.figure.Input.quantity;
import static bayproof.figure.RuleFigure.AT;
import static bayproof.figure.RuleFigure.SUBJECT;
import static bayproof.units.Units.print;

import bayproof.figure.RuleFigure.Asked;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.ChargedBattery;
import bayproof.vocabulary.LoadedAmplifier;
import bayproof.vocabulary.PlannedReading;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.SleepReading;
import bayproof.vocabulary.SoakedJob;
import java.util.Collections;
import java.util.List;

/** Rules on what is measured at handover, asked by hand. */
final class ProvingRules {
    private static final Shown<Double> ZERO = Shown.of(0.0);

    private ProvingRules() {
    }

    static List<RuleFigure> all() {
        return List.of(
                new RuleFigure("readings-near-the-plan", List.of(quantity("read", Dimension.CURRENT, "what the instrument shows"),
                        quantity("planned", Dimension.CURRENT, "what was planned")), "read=60 A planned=100 A", given -> new Asked(new PlannedReading(SUBJECT, AT, Shown.of(true),
                        Shown.of(Sums.apartShare(given.number("read"), given.number("planned"))), Shown.of("")),
                        print(given.number("read"), Dimension.CURRENT) + " against " + print(given.number("planned"), Dimension.CURRENT))),
                new RuleFigure("drop-measured-in-budget", List.of(quantities("drop", Dimension.VOLTAGE, "drops read in feed and ground at loud programme")), "drop=0.18 V, 0.12 V",
                        given -> new Asked(loaded(Shown.of(Sums.share(given.sum("drop"), given.limit("drop-reference"))), ZERO, ZERO, ZERO),
                                print(given.sum("drop"), Dimension.VOLTAGE) + " / " + print(given.limit("drop-reference"), Dimension.VOLTAGE))),
                new RuleFigure("joint-drops-small", List.of(quantity("joint", Dimension.VOLTAGE, "drop at the worst joint"), quantity("ground", Dimension.VOLTAGE,
                        "drop of the ground side")), "joint=20 mV ground=90 mV", given -> Asked.of(loaded(ZERO, given.shown("ground"), given.shown("joint"), ZERO))),
                new RuleFigure("amplifier-case-cool", List.of(quantity("case", Dimension.TEMPERATURE, "temperature of the case after the heat soak")), "case=52 °C",
                        given -> Asked.of(loaded(ZERO, ZERO, ZERO, given.shown("case")))),
                new RuleFigure("heat-soak-passed", List.of(quantity("play", Dimension.TIME, "time of loud play"), quantity("joint", Dimension.TEMPERATURE,
                        "temperature of the hottest fuse or terminal after it"), quantity("air", Dimension.TEMPERATURE, "temperature of the air")), "play=30 min joint=48 °C air=22 °C",
                        given -> new Asked(new SoakedJob(SUBJECT, AT, given.shown("play"), Shown.of(given.number("joint") - given.number("air"))),
                                print(given.number("joint"), Dimension.TEMPERATURE) + " - " + print(given.number("air"), Dimension.TEMPERATURE))),
                new RuleFigure("charging-volts-measured", List.of(quantities("volts", Dimension.VOLTAGE, "charging volts read at the battery"), quantity("fall", Dimension.VOLTAGE,
                        "fall at idle while the load lasts"), quantity("least", Dimension.VOLTAGE, "least charging volts of its data sheet"), quantity("most", Dimension.VOLTAGE,
                        "greatest charging volts of its data sheet")), "volts=14.3 V, 14.0 V fall=0.2 V least=13.6 V most=14.8 V", given -> Asked.of(new ChargedBattery(SUBJECT, AT,
                        Shown.of(Collections.min(given.numbers("volts"))), Shown.of(Collections.max(given.numbers("volts"))), given.shown("fall"), given.shown("least"),
                        given.shown("most")))),
                new RuleFigure("standby-measured", List.of(quantity("read", Dimension.CURRENT, "current at the last point of the sleep test"), quantity("allowed", Dimension.CURRENT,
                        "the vehicle maker's figure")), "read=21 mA allowed=30 mA", given -> new Asked(sleep(ZERO, ZERO, ZERO, ZERO, Shown.of(Sums.share(given.number("read"), given.number("allowed")))),
                        print(given.number("read"), Dimension.CURRENT) + " / " + print(given.number("allowed"), Dimension.CURRENT))),
                new RuleFigure("sleep-test-undisturbed", List.of(quantity("key", Dimension.LENGTH, "distance of the key")), "key=8 m", given -> Asked.of(
                        sleep(given.shown("key"), ZERO, ZERO, ZERO, ZERO))),
                new RuleFigure("asleep-in-time", List.of(quantity("after", Dimension.TIME, "time until it drew no more than is allowed"), quantity("sleeps", Dimension.TIME,
                        "time until the vehicle sleeps, by its maker")), "after=40 min sleeps=75 min", given -> new Asked(sleep(ZERO, ZERO, ZERO,
                        Shown.of(Sums.share(given.number("after"), given.number("sleeps"))), ZERO),
                        print(given.number("after"), Dimension.TIME) + " / " + print(given.number("sleeps"), Dimension.TIME))),
                new RuleFigure("sleep-waited-out", List.of(quantity("waited", Dimension.TIME, "time until the last point"), quantity("sleeps", Dimension.TIME, "time until the vehicle sleeps"),
                        quantity("before", Dimension.CURRENT, "current at the last but one point"), quantity("last", Dimension.CURRENT, "current at the last point")),
                        "waited=45 min sleeps=30 min before=21.4 mA last=21 mA", given -> new Asked(sleep(ZERO, Shown.of(Sums.share(given.number("waited"), given.number("sleeps"))),
                        Shown.of(Sums.share(given.number("before") - given.number("last"), given.number("before"))), ZERO, ZERO),
                        print(given.number("waited"), Dimension.TIME) + " / " + print(given.number("sleeps"), Dimension.TIME) + "; the fall over the current before it")));
    }

    private static LoadedAmplifier loaded(Shown<Double> drop, Shown<Double> ground, Shown<Double> joint, Shown<Double> cased) {
        return new LoadedAmplifier(SUBJECT, AT, drop, ground, joint, cased);
    }

    /** A sleep test with every latch closed and the meter clamped on, so that the numbers alone decide. */
    private static SleepReading sleep(Shown<Double> key, Shown<Double> waited, Shown<Double> fall, Shown<Double> asleep, Shown<Double> share) {
        return new SleepReading(SUBJECT, AT, Shown.of("closed"), key, Shown.of("clamp"), waited, fall, asleep, share);
    }
}
