package bayproof.worksheet;

import bayproof.read.AudioInput;
import bayproof.read.AudioTable;
import bayproof.read.Job;
import bayproof.read.Vehicle;
import bayproof.solve.sound.Levels;
import bayproof.solve.sound.MeasuredTones;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;

/**
 * What a channel of sound from the factory system gives at the two volume steps it was measured at.
 *
 * @param channel   channel of the plan
 * @param quietVolts clean volts at 1 kHz at the low step; of outputs that are summed, their sum
 * @param loudVolts the same at the high step
 * @param offset    level of the low step against the high one, dB, below 0
 * @param setAt     volume at which the settings hold, as the plan says
 */
public record SourceLevel(String channel, Shown<Double> quietVolts, Shown<Double> loudVolts, Shown<Double> offset, Shown<String> setAt) {

    /** The channels of a job, in the order of the plan. */
    public static List<SourceLevel> of(Job job) {
        List<SourceLevel> levels = new ArrayList<>();
        for (AudioInput channel : job.plan().audioInputs().values()) {
            Shown<Double> quiet = sum(job, channel, true);
            Shown<Double> loud = sum(job, channel, false);
            Shown<Double> offset = quiet.with(loud, (low, high) -> low > 0 && high > 0
                    ? -MeasuredTones.bass(low, low).offsetDecibels(MeasuredTones.bass(high, high)) : Double.NEGATIVE_INFINITY);
            levels.add(new SourceLevel(channel.id(), quiet, loud, offset, channel.setAtVolume()));
        }
        return levels;
    }

    private static Shown<Double> sum(Job job, AudioInput channel, boolean quiet) {
        return channel.of().then(ids -> {
            Shown<Double> sum = Shown.of(0.0);
            for (String id : ids) {
                Vehicle.Output output = job.vehicle().outputs().get(id);
                AudioTable table = output.audio();
                sum = sum.with((quiet ? table.quiet() : table.loud()).midVolts(), Double::sum);
            }
            return sum;
        });
    }

    /** What a target at the high step becomes when the source stands at the low one. */
    public static double moved(double targetVolts, double offset) {
        return Levels.voltsAt(targetVolts, offset);
    }
}
