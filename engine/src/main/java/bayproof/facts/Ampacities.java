package bayproof.facts;

import bayproof.facts.WindowedValue.Result;
import bayproof.read.Run;
import bayproof.units.Dimension;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.OptionalDouble;

/** The current each run may carry where it lies. */
final class Ampacities {
    private final Model model;

    Ampacities(Model model) {
        this.model = model;
    }

    /** Ampacity of a run where it lies; a window where nobody named its metal, its insulation or where it lies. */
    Shown<Double> of(Run run) {
        return run.size().then(size -> of(run, size));
    }

    private Shown<Double> of(Run run, String size) {
        Corner bad = Corner.bad(model.job.limits(), Question.AMPACITY);
        Corner good = Corner.good(model.job.limits(), Question.AMPACITY);
        Result atBad = amperes(run, size, bad);
        Result atGood = amperes(run, size, good);
        if (atBad.collapse() != null && atGood.collapse() == null) {
            return Shown.missing(bad.windows().stream()
                    .map(window -> new Need(window.path(), model.limit(window.limit()).says(), run.at())).toList());
        }
        return WindowedValue.of(bad, good, atBad, atGood,
                window -> amperes(run, size, Corner.relieved(model.job.limits(), Question.AMPACITY, window)));
    }

    private Result amperes(Run run, String size, Corner corner) {
        double insulation = corner.orWindow(model.insulationCelsius(run), "insulation-class");
        double ambient = corner.orWindow(model.ambientCelsius(run), "ambient-anywhere");
        double metal = run.metal().isGiven() ? 1 : corner.window("clad-ampacity", run.path() + ".metal");
        OptionalDouble copper = model.conductors().ampacityAmperes(size, run.metal().orElse("copper"), insulation, ambient);
        if (copper.isEmpty()) {
            return new Result(Double.NaN, "there is no published current for " + size + " with "
                    + Model.print(insulation, Dimension.TEMPERATURE) + " insulation", null);
        }
        if (copper.getAsDouble() == 0) {
            return new Result(Double.NaN, run.id() + " may carry no current at all: the hottest zone it passes, "
                    + Model.print(ambient, Dimension.TEMPERATURE) + ", uses up its " + Model.print(insulation, Dimension.TEMPERATURE)
                    + " insulation", null);
        }
        return new Result(copper.getAsDouble() * metal, null, () -> size + ", " + run.metal().orElse("metal not named") + ", "
                + Model.print(insulation, Dimension.TEMPERATURE) + " insulation, hottest zone " + Model.print(ambient, Dimension.TEMPERATURE)
                + " (33 CFR 183.425 Table 5)");
    }
}
