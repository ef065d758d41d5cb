package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Mount;
import bayproof.read.Ownership;
import bayproof.read.Plan;
import bayproof.read.Vehicle;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.LastingWork;
import bayproof.vocabulary.Shown;
import bayproof.vocabulary.VehicleOwner;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** Facts about whose vehicle it is, and the planned work that its owner must have agreed to. */
final class OwnershipFacts {
    private final Model model;
    private final Ownership owner;
    private final Shown<Boolean> ofAnother;

    OwnershipFacts(Model model) {
        this.model = model;
        this.owner = model.job.plan().ownedBy();
        this.ofAnother = owner.kind().map(kind -> !kind.equals("customer"));
    }

    /** The day of return; before anybody asked whether it goes back, that is what has to be asked. */
    private Shown<String> back() {
        return owner.returns().then(returns -> owner.returnsOn());
    }

    /** Whether the day of return lies after that of the plan; a plan without a day says nothing against it. */
    private Shown<Boolean> ahead() {
        return Days.day(back(), "owned-by.returns-on", owner.at()).then(back -> !model.job.plan().job().date().isGiven() ? Shown.of(true)
                : Days.day(model.job.plan().job().date(), "job.date", model.job.planAt()).map(back::isAfter));
    }

    void collect(Consumer<Fact> facts) {
        facts.accept(new VehicleOwner("owned-by", owner.at(), owner.kind(), owner.returns(), back(), ahead()));
        Set<String> holes = new TreeSet<>();
        model.job.plan().runs().values().forEach(run -> holes.addAll(run.through().orElse(List.of())));
        for (String id : holes) {
            Vehicle.PassThrough hole = model.job.passThroughs().get(id);
            if (hole != null) {
                lasting(hole.path(), hole.at(), hole.origin().map("drilled"::equals), facts);
            }
        }
        for (Item item : model.job.items().values()) {
            Mount mount = item.mount();
            if (mount != null && !item.path().startsWith("supply.")) {
                lasting(mount.path(), mount.at(), drills(mount.fastener()), facts);
            } else if (item instanceof Item.GroundPoint ground) {
                lasting(ground.path(), ground.at(), drills(ground.fastener()), facts);
            }
        }
        for (Plan.PinUse pin : model.job.plan().pins().values()) {
            lasting(pin.path(), pin.at(), pin.method().map("cut-and-join"::equals), facts);
        }
    }

    private Shown<Boolean> drills(Shown<String> fastener) {
        return fastener.map(model.limit("fasteners-that-drill").words()::contains);
    }

    private void lasting(String path, At at, Shown<Boolean> lasting, Consumer<Fact> facts) {
        facts.accept(new LastingWork(path, at, lasting, ofAnother, owner.agreed().word()));
    }
}
