package bayproof.facts;

import bayproof.read.Run;
import bayproof.units.Dimension;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.Windows;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** The current each run may carry where it lies. */
final class Ampacities {
    private final Model model;

    Ampacities(Model model) {
        this.model = model;
    }

    /** Ampacity of a run where it lies; a window where nobody named its metal. */
    Shown<Double> of(Run run) {
        return run.size().with(model.insulationCelsius(run), (size, insulation) -> insulation)
                .with(model.ambientCelsius(run), (insulation, ambient) -> new double[] {insulation, ambient})
                .then(heat -> of(run, heat[0], heat[1]));
    }

    private Shown<Double> of(Run run, double insulationCelsius, double ambientCelsius) {
        String size = run.size().orElse("");
        OptionalDouble copper = model.conductors().ampacityAmperes(size, run.metal().orElse("copper"), insulationCelsius, ambientCelsius);
        if (copper.isEmpty()) {
            return new Shown.Collapsed<>("there is no published current for " + size + " with "
                    + Model.print(insulationCelsius, Dimension.TEMPERATURE) + " insulation");
        }
        Supplier<String> calculation = () -> size + ", " + run.metal().orElse("metal not named") + ", " + Model.print(insulationCelsius, Dimension.TEMPERATURE)
                + " insulation, hottest zone " + Model.print(ambientCelsius, Dimension.TEMPERATURE) + " (33 CFR 183.425 Table 5)";
        if (copper.getAsDouble() == 0) {
            return new Shown.Collapsed<>(run.id() + " may carry no current at all: the hottest zone it passes, "
                    + Model.print(ambientCelsius, Dimension.TEMPERATURE) + ", uses up its " + Model.print(insulationCelsius, Dimension.TEMPERATURE)
                    + " insulation");
        }
        if (run.metal().isGiven()) {
            return Shown.of(copper.getAsDouble(), calculation);
        }
        Corner bad = Corner.bad(model.job.limits(), Question.AMPACITY);
        Corner good = Corner.good(model.job.limits(), Question.AMPACITY);
        double low = copper.getAsDouble() * bad.window("clad-ampacity", run.path() + ".metal");
        double high = copper.getAsDouble() * good.window("clad-ampacity", run.path() + ".metal");
        return new Shown.Assumed<>(low, high, Windows.unweighed(bad.windows()), calculation);
    }
}
