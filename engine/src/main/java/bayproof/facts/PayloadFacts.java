package bayproof.facts;

import bayproof.read.Item;
import bayproof.solve.Sums;
import bayproof.units.Dimension;
import bayproof.vocabulary.AddedMass;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Shown;
import java.util.List;
import java.util.function.Consumer;

/** Facts about the mass that a job adds to what its vehicle already carries. */
final class PayloadFacts {
    private static final String SUBJECT = "payload-left";

    private final Model model;

    PayloadFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        // What the vehicle maker mounted is in the vehicle's own mass.
        List<Item> mounted = model.job.items().values().stream().filter(item -> item.fitting() != null && !item.path().startsWith("supply.")).toList();
        if (mounted.isEmpty()) {
            return;
        }
        Gathered gathered = new Gathered();
        double known = 0;
        for (Item item : mounted) {
            double kilograms = gathered.number(item.fitting().massKilograms());
            known += Double.isNaN(kilograms) ? 0 : kilograms;
        }
        double added = known;
        // Enough in what is known is enough, whatever the rest is; too much is too much.
        double least = model.value("payload-mass");
        Shown<Boolean> counts = added >= least ? Shown.of(true) : gathered.then(() -> false);
        Shown<Double> left = model.job.vehicle().payloadLeftKilograms();
        gathered.number(left);
        Shown<Double> share = left.then(kilograms -> {
            double part = Sums.share(added, kilograms);
            boolean tooMuch = part > model.limit("payload-share").steps().get(0).value();
            String calculation = Model.print(added, Dimension.MASS) + " / " + Model.print(kilograms, Dimension.MASS);
            return tooMuch ? Shown.of(part, () -> calculation) : gathered.then(() -> part, () -> calculation);
        });
        At at = left.needs().isEmpty() ? left.atOr(mounted.get(0).at()) : left.needs().get(0).at();
        facts.accept(new AddedMass(SUBJECT, at, counts, share));
    }
}
