package bayproof.facts;

import bayproof.read.Run;
import bayproof.units.Dimension;
import bayproof.units.Units;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Planned values that can be changed to put something right, with the values worth trying, nearest first. */
final class Ladders {
    private static final double STEP_METRES = 0.01;

    private final Model model;

    Ladders(Model model) {
        this.model = model;
    }

    /** Lengths below the planned one, a centimeter apart; null where no length was planned. */
    Knob shorter(Run run) {
        double planned = run.lengthMetres().orElse(Double.NaN);
        if (model.job.isFactory(run) || Double.isNaN(planned)) {
            return null;
        }
        return knob(() -> centimetresBelow(planned), "runs", run.id(), "length");
    }

    private static List<String> centimetresBelow(double planned) {
        List<String> ladder = new ArrayList<>();
        for (long centimetres = (long) Math.ceil(planned / STEP_METRES - 1e-9) - 1; centimetres >= 1 && ladder.size() < 3000; centimetres--) {
            ladder.add(java.math.BigDecimal.valueOf(centimetres, 2).toPlainString() + " m");
        }
        return ladder;
    }

    /** Cable sizes above the planned one; null where no size was planned. */
    Knob thicker(Run run) {
        String planned = run.size().orElse(null);
        if (planned == null || model.job.isFactory(run)) {
            return null;
        }
        // Another cable takes other terminals: those that are planned change with it.
        List<List<String>> terminals = new ArrayList<>();
        if (run.ends().from().takes().isGiven()) {
            terminals.add(List.of("runs", run.id(), "ends", "from", "takes"));
        }
        if (run.ends().to().takes().isGiven()) {
            terminals.add(List.of("runs", run.id(), "ends", "to", "takes"));
        }
        return new Knob("plan", List.of("runs", run.id(), "size"), () -> model.conductors().larger(planned), terminals);
    }

    /** Values of a length below the planned one, a centimeter apart; null where none was planned. */
    Knob smaller(Run run, String key, Shown<Double> planned) {
        return planned.isGiven() && !model.job.isFactory(run)
                ? knob(() -> centimetresBelow(planned.orElse(0.0)), "runs", run.id(), key) : null;
    }

    /** Values of a length above the planned one, a centimeter apart up to a meter more; null where none was planned. */
    Knob larger(Run run, String key, Shown<Double> planned) {
        return planned.isGiven() && !model.job.isFactory(run)
                ? knob(() -> centimetresAbove(planned.orElse(0.0)), "runs", run.id(), key) : null;
    }

    private static List<String> centimetresAbove(double planned) {
        List<String> ladder = new ArrayList<>();
        long first = (long) Math.floor(planned / STEP_METRES + 1e-9) + 1;
        for (long centimetres = first; centimetres <= first + 100; centimetres++) {
            ladder.add(java.math.BigDecimal.valueOf(centimetres, 2).toPlainString() + " m");
        }
        return ladder;
    }

    /** Standard ratings below the planned one; {@code fuse} is the id of a fuse, or of a block with its outlet. */
    Knob weaker(String fuse, double planned) {
        return fuse(fuse, () -> model.fuses().below(planned));
    }

    /** The same with standard ratings above the planned one. */
    Knob stronger(String fuse, double planned) {
        return fuse(fuse, () -> model.fuses().above(planned));
    }

    private static Knob fuse(String fuse, Supplier<List<Double>> ratings) {
        Supplier<List<String>> ladder = () -> ratings.get().stream().map(rating -> Units.print(rating, Dimension.CURRENT)).toList();
        int dot = fuse.indexOf('.');
        return dot < 0 ? knob(ladder, "items", fuse, "rating")
                : knob(ladder, "items", fuse.substring(0, dot), "fuses", fuse.substring(dot + 1));
    }

    static Knob knob(Supplier<List<String>> ladder, String... path) {
        return new Knob("plan", List.of(path), ladder);
    }
}
