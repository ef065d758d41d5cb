package bayproof.facts;

import bayproof.read.Item;
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
        Shown<Double> sum = added > left.orElse(Double.MAX_VALUE) ? Shown.of(added) : gathered.then(() -> added);
        At at = left.needs().isEmpty() ? left.atOr(mounted.get(0).at()) : left.needs().get(0).at();
        facts.accept(new AddedMass(SUBJECT, at, counts, sum, left));
    }
}
