package bayproof.facts;

import bayproof.graph.Link;
import bayproof.graph.WiringGraph;
import bayproof.read.Item;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.FusePath;
import bayproof.vocabulary.FuseSide;
import bayproof.vocabulary.GroundedSupply;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about where each fuse lies in the wiring: alone on its way, and in the feed. */
final class FusePathFacts {
    private final Model model;
    private final FeedTree feeds;
    private final List<Link> fuses;

    FusePathFacts(Model model) {
        this.model = model;
        this.feeds = model.feeds();
        this.fuses = model.wiring.links().stream().filter(link -> link.kind() == Link.Kind.FUSE)
                .filter(link -> link.item() instanceof Item.Fuse || model.wiring.at(link.to()).size() > 1).toList();
    }

    void collect(Consumer<Fact> facts) {
        Shown<String> side = model.job.vehicle().supply().groundSide();
        facts.accept(new GroundedSupply("supply.ground-side", model.job.planAt(), Shown.of(new SupplyVolts(model).isUsed()), side));
        for (Link fuse : fuses) {
            int dot = fuse.id().indexOf('.');
            String subject = fuse.item().path() + (dot < 0 ? "" : ".fuses" + fuse.id().substring(dot));
            facts.accept(path(subject, fuse));
            facts.accept(new FuseSide(subject, fuse.item().at(), side.map("negative"::equals), inFeed(fuse)));
        }
    }

    // side by side

    private FusePath path(String subject, Link fuse) {
        Set<String> one = model.wiring.net(fuse.from());
        Set<String> other = model.wiring.net(fuse.to());
        TreeSet<String> beside = new TreeSet<>();
        if (one == other) {
            beside.add("a plain conductor");
        }
        List<Need> open = new ArrayList<>();
        for (Link fellow : fuses) {
            Set<String> from = model.wiring.net(fellow.from());
            Set<String> to = model.wiring.net(fellow.to());
            if (fellow != fuse && (from == one && to == other || from == other && to == one)) {
                beside.add(fellow.id());
            } else if (fellow != fuse && (from == one || to == one || from == other || to == other)) {
                // What ends nowhere yet may still lead to the end of the other fuse.
                open.addAll(openEnds(from == one || to == one ? other : one));
            }
        }
        Shown<Boolean> alone = !beside.isEmpty() ? Shown.of(false) : open.isEmpty() ? Shown.of(true) : Shown.missing(open.stream().distinct().toList());
        return new FusePath(subject, fuse.item().at(), alone, Shown.of(String.join(", ", beside)));
    }

    private List<Need> openEnds(Set<String> net) {
        List<Need> needs = new ArrayList<>();
        for (String terminal : net) {
            if (WiringGraph.isOpen(terminal)) {
                model.wiring.at(terminal).forEach(link -> needs.addAll((link.run().from().isGiven() ? link.run().to() : link.run().from()).needs()));
            }
        }
        return needs;
    }

    // in the feed

    private Shown<Boolean> inFeed(Link fuse) {
        if (model.wiring.net(fuse.from()).stream().anyMatch(model.wiring::isReturn) || model.wiring.net(fuse.to()).stream().anyMatch(model.wiring::isReturn)) {
            return Shown.of(false);
        }
        return feeds.reaches(fuse.from()) ? Shown.of(true)
                : Shown.missing(new Need("runs", "the run that feeds " + fuse.id(), fuse.item().at()));
    }
}
