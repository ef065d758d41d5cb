package bayproof.facts;

import bayproof.read.Taken;
import bayproof.read.Taking;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;

/** Values that count only when an instrument showed them: a reading, or a group that says with what, by whom and when it was taken. */
final class Measured {
    private final Model model;
    private final CalibrationFacts calibrations;

    Measured(Model model) {
        this.model = model;
        this.calibrations = new CalibrationFacts(model);
    }

    /** The value when it was measured; one that was merely written down is missing. */
    Shown<Double> value(String group, String key, Shown<Double> written, Taking taking) {
        String path = group + "." + key;
        Taken taken = model.job.taken().get(path);
        if (!written.isGiven() || taken != null && taken.counts()) {
            return written;
        }
        At at = written.atOr(model.job.planAt());
        if (!taking.word().isGiven()) {
            return Shown.missing(new Need(path, "the same as a reading, with instrument, state, who and when", at));
        }
        Shown<String> tool = taking.instrument().map(name -> name.replace(' ', '-'));
        return calibrations.reliable(tool, taking.when(), group + ".when", at).then(reliable -> written);
    }
}
