package bayproof.worksheet;

import bayproof.demand.Limits;
import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.vocabulary.Shown;
import java.util.List;

/**
 * The hours of the steps: those worked, spread from low to high, and those waited, which are as long as they are.
 *
 * @param lines          the steps in the order of the plan
 * @param lowSeconds     worked, when all goes well; missing while a step gives no hours
 * @param likelySeconds  worked, as planned
 * @param highSeconds    worked, when things go wrong
 * @param waitingSeconds waited
 */
public record WorkHours(List<Line> lines, Shown<Double> lowSeconds, Shown<Double> likelySeconds, Shown<Double> highSeconds,
                        Shown<Double> waitingSeconds) {

    /** One step; a step that is waited for has the same time three times. */
    public record Line(String id, Shown<String> does, boolean waiting, Shown<Double> lowSeconds, Shown<Double> likelySeconds,
                       Shown<Double> highSeconds, Shown<List<String>> after) {
    }

    static WorkHours of(Job job) {
        Limits limits = job.limits();
        double low = limits.named("hours-low").value();
        double high = limits.named("hours-high").value();
        List<String> waits = limits.named("waiting-work").words();
        List<Line> lines = job.plan().steps().values().stream().map(step -> line(step, waits, low, high)).toList();
        Shown<Double> none = Shown.of(0.0);
        Shown<Double> lowSum = none;
        Shown<Double> likelySum = none;
        Shown<Double> highSum = none;
        Shown<Double> waitingSum = none;
        for (Line line : lines) {
            if (line.waiting()) {
                waitingSum = waitingSum.with(line.likelySeconds(), Double::sum);
            } else {
                lowSum = lowSum.with(line.lowSeconds(), Double::sum);
                likelySum = likelySum.with(line.likelySeconds(), Double::sum);
                highSum = highSum.with(line.highSeconds(), Double::sum);
            }
        }
        return new WorkHours(lines, lowSum, likelySum, highSum, waitingSum);
    }

    private static Line line(Plan.Step step, List<String> waits, double low, double high) {
        boolean waiting = waits.contains(step.does().orElse(""));
        return new Line(step.id(), step.does(), waiting, step.seconds().map(seconds -> waiting ? seconds : seconds * low), step.seconds(),
                step.seconds().map(seconds -> waiting ? seconds : seconds * high), step.after());
    }

    /** Steps that give no hours. */
    public int open() {
        return (int) lines.stream().filter(line -> !line.likelySeconds().isGiven()).count();
    }
}
