package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FedAmplifiers;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Facts about the fuses on the amplifiers and the one that feeds them; an amplifier that no fuse feeds is judged by the rules on fuses near a source. */
final class OwnFuseFacts {
    private final Model model;

    OwnFuseFacts(Model model) {
        this.model = model;
    }

    void collect(Consumer<Fact> facts) {
        FeedTree feeds = model.feeds();
        Map<Link, List<Item.Amplifier>> fed = new LinkedHashMap<>();
        for (Item.Amplifier amplifier : model.job.itemsOf(Item.Amplifier.class)) {
            feeds.nearestFuses(amplifier.id() + ".supply").forEach(fuse -> fed.computeIfAbsent(fuse, any -> new ArrayList<>()).add(amplifier));
        }
        fed.forEach((fuse, amplifiers) -> facts.accept(of(fuse, amplifiers)));
    }

    private static FedAmplifiers of(Link fuse, List<Item.Amplifier> amplifiers) {
        Shown<Double> sum = Shown.of(0.0);
        for (Item.Amplifier amplifier : amplifiers) {
            sum = sum.with(amplifier.input().ownFuseAmperes(), Double::sum);
        }
        int dot = fuse.id().indexOf('.');
        String subject = fuse.item().path() + (dot < 0 ? "" : ".fuses" + fuse.id().substring(dot));
        return new FedAmplifiers(subject, fuse.ratingAmperes().atOr(fuse.item().at()), sum.then(total -> Shown.of(total,
                () -> String.join(" + ", amplifiers.stream().map(Item.Amplifier::id).toList()))), fuse.ratingAmperes());
    }
}
