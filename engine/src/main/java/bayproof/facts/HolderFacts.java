package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Run;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Holder;
import bayproof.vocabulary.HolderEnd;
import bayproof.vocabulary.HolderPlace;
import bayproof.vocabulary.Knob;
import bayproof.vocabulary.Shown;
import java.util.function.Consumer;

/** Facts about what holds each fuse: what it is made for, what it takes, and where it sits. */
final class HolderFacts {
    private final Model model;
    private final Ladders ladders;

    HolderFacts(Model model) {
        this.model = model;
        this.ladders = new Ladders(model);
    }

    void collect(Consumer<Fact> facts) {
        for (Item.Fuse fuse : model.job.itemsOf(Item.Fuse.class)) {
            facts.accept(new Holder(fuse.path(), fuse.at(), fuse.ratingAmperes(), fuse.holderAmperes(), weaker(fuse.id(), fuse.ratingAmperes())));
            facts.accept(place(fuse, fuse.holderSealed()));
        }
        for (Item.FuseBlock block : model.job.itemsOf(Item.FuseBlock.class)) {
            block.fuses().forEach((outlet, rating) -> facts.accept(new Holder(block.path() + ".fuses." + outlet, rating.atOr(block.at()), rating,
                    block.holderAmperes(), weaker(block.id() + "." + outlet, rating))));
            facts.accept(place(block, block.holderSealed()));
        }
        for (Run run : model.job.runs().values()) {
            if (!model.job.isFactory(run)) {
                end(run, "from", run.from(), facts);
                end(run, "to", run.to(), facts);
            }
        }
    }

    private Knob weaker(String fuse, Shown<Double> rating) {
        return rating.isGiven() ? ladders.weaker(fuse, rating.orElse(0.0)) : null;
    }

    private HolderPlace place(Item holder, Shown<String> sealed) {
        Shown<String> kind = model.body.zoneOf(Shown.of(holder.id() + ".in")).then(id -> model.zoneKind(id, holder.at()));
        return new HolderPlace(holder.path(), holder.at(), kind.map(word -> model.limit("wet-zones").words().contains(word)), kind,
                sealed.map("yes"::equals));
    }

    private void end(Run run, String name, Shown<String> terminal, Consumer<Fact> facts) {
        Item item = model.job.itemOf(terminal.orElse(""));
        Shown<String> takes = item instanceof Item.Fuse fuse ? fuse.holderTakes() : item instanceof Item.FuseBlock block ? block.holderTakes() : null;
        if (takes != null) {
            facts.accept(new HolderEnd(run.path() + ".ends." + name, run.at(), run.size().with(takes, this::fits),
                    run.size().with(takes, (size, most) -> size + " in a holder for " + most)));
        }
    }

    private boolean fits(String size, String most) {
        return model.conductors().areaSquareMetres(size) <= model.conductors().areaSquareMetres(most) * (1 + 1e-9);
    }
}
