package bayproof.handover;

import bayproof.demand.Limits;
import bayproof.solve.sound.Hearing;
import java.util.ArrayList;
import java.util.List;

/** How long loud sound may last by the advice for people at work: what a customer is told. */
public final class HearingNote {
    private static final double[] LOUDER = {3, 9, 15};

    private HearingNote() {
    }

    /**
     * A level and the time that the advice allows at it.
     *
     * @param decibels level, A-weighted
     * @param seconds  time a day
     */
    public record Allowed(double decibels, double seconds) {
    }

    /** A few levels above the one that is allowed for eight hours. */
    public static List<Allowed> of(Limits limits) {
        double level = limits.named("hearing-level-health").value();
        Hearing.Criterion health = new Hearing.Criterion(level, limits.named("hearing-exchange-health").value());
        List<Allowed> times = new ArrayList<>();
        for (double louder : LOUDER) {
            times.add(new Allowed(level + louder, health.allowedSeconds(level + louder)));
        }
        return times;
    }
}
