package bayproof.facts;

import bayproof.read.Taken;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.units.Quantity;
import bayproof.units.UnitException;
import bayproof.units.Units;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.PlannedReading;
import bayproof.vocabulary.Shown;
import java.util.function.Consumer;

/** Facts about readings that took the place of a planned value. A temperature or a level has no share of another. */
final class PlannedReadingFacts {
    private final Model model;

    PlannedReadingFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        for (Taken taken : model.job.taken().values()) {
            Quantity read = taken.value().orElse(null);
            Quantity planned = read == null || !taken.counts() ? null : planned(taken, read);
            if (planned != null) {
                double apart = Sums.apartShare(read.si(), planned.si());
                Shown<Double> share = Shown.of(apart, () -> Model.print(read.si(), read.dimension()) + " read, " + taken.replaced() + " planned");
                model.numbers.put("readings." + taken.id() + ".apart", apart, Dimension.RATIO, () -> Model.print(read.si(), read.dimension())
                        + " read, " + taken.replaced() + " planned");
                facts.accept(new PlannedReading("readings." + taken.id(), taken.at(), Shown.of(!taken.explained().isGiven()), share, Shown.of(taken.replaced())));
            }
        }
    }

    /** What the reading replaced; null where nothing of the kind was written. */
    private static Quantity planned(Taken taken, Quantity read) {
        boolean shares = switch (read.dimension()) {
            case TEMPERATURE, LEVEL -> false;
            default -> true;
        };
        try {
            return shares && !taken.replaced().isEmpty() ? Units.parse(taken.replaced(), read.dimension()) : null;
        } catch (UnitException e) {
            return null;
        }
    }
}
