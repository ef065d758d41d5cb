package bayproof.solve.sound;

import java.util.ArrayList;
import java.util.List;

/**
 * A signal on its way from a source through links, each of which has a greatest clean input, a gain and a greatest clean output.
 *
 * @param sourceVolts greatest clean volts of the source
 * @param links       what the signal passes, in order
 */
public record SignalChain(double sourceVolts, List<Link> links) {

    /**
     * One device.
     *
     * @param name            its name
     * @param mostInputVolts  greatest clean volts at its input; infinite where nothing is known to clip there
     * @param gainDecibels    its gain as set
     * @param mostOutputVolts greatest clean volts at its output, into its planned load
     */
    public record Link(String name, double mostInputVolts, double gainDecibels, double mostOutputVolts) {
    }

    /**
     * The signal at one device with the source at its greatest clean volts.
     *
     * @param name            the device
     * @param inputVolts      volts at its input
     * @param outputVolts     volts it is asked for at its output
     * @param inputDecibels   room at the input before it clips; below 0 it clips
     * @param outputDecibels  room at the output before it clips; below 0 it clips
     */
    public record Step(String name, double inputVolts, double outputVolts, double inputDecibels, double outputDecibels) {
        /** The smaller room of the two. */
        public double marginDecibels() {
            return Math.min(inputDecibels, outputDecibels);
        }
    }

    public SignalChain {
        links = List.copyOf(links);
    }

    /** The signal at every link, nothing taken off where one clips. */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        double volts = sourceVolts;
        for (Link link : links) {
            double out = Levels.voltsAt(volts, link.gainDecibels());
            steps.add(new Step(link.name(), volts, out, Levels.decibels(link.mostInputVolts(), volts), Levels.decibels(link.mostOutputVolts(), out)));
            volts = out;
        }
        return steps;
    }

    /** The link that clips first when the source rises: the one with the least margin; of equal ones the last, as it should be. */
    public Step clipsFirst() {
        Step first = null;
        for (Step step : steps()) {
            if (first == null || step.marginDecibels() <= first.marginDecibels() + 1e-9) {
                first = step;
            }
        }
        return first;
    }
}
