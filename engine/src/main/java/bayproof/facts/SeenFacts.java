package bayproof.facts;

import bayproof.read.Item;
import bayproof.read.Mount;
import bayproof.read.Plan;
import bayproof.read.Seen;
import bayproof.read.Vehicle;
import bayproof.vocabulary.At;
import bayproof.vocabulary.Fact;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.SeenValue;
import bayproof.vocabulary.Shown;
import java.util.function.Consumer;

/**
 * Facts about where pins, ground points and depths were seen. The nearest word counts: that of the value, of its group, of the
 * sheet. A sheet filled in for another job was seen on another car, whatever it says.
 */
final class SeenFacts {
    private static final String HERE = "this-car";

    private final Model model;
    private final Vehicle vehicle;

    SeenFacts(Model model) {
        this.model = model;
        this.vehicle = model.job.vehicle();
    }

    void collect(Consumer<Fact> facts) {
        for (Plan.PinUse pin : model.job.plan().pins().values()) {
            facts.accept(new SeenValue(pin.path(), pin.at(), pin(pin)));
        }
        for (Item item : model.job.items().values()) {
            Mount mount = item.mount();
            if (item instanceof Item.GroundPoint ground) {
                facts.accept(new SeenValue(ground.path(), ground.at(), atPlace(ground.seen(), item, "the ground point " + item.id())));
            } else if (mount != null && !item.path().startsWith("supply.")) {
                facts.accept(new SeenValue(mount.path(), mount.at(), atPlace(mount.seen(), item, "the depth behind " + item.id())));
            }
        }
        // A space is one subject, however many boxes stand in it.
        for (Vehicle.Space space : vehicle.spaces().values()) {
            if (model.job.itemsOf(Item.Enclosure.class).stream().anyMatch(box -> space.id().equals(box.space().orElse("")))) {
                facts.accept(new SeenValue(space.path(), space.at(), onSheet(space.path(), space.at(), "the space " + space.id(), space.seen())));
            }
        }
    }

    private Shown<String> pin(Plan.PinUse pin) {
        String what = "the pin " + pin.id();
        Vehicle.Connector connector = vehicle.connectors().get(pin.id().substring(0, pin.id().indexOf('.')));
        if (connector == null) {
            return onSheet("connectors." + pin.id(), pin.at(), what);
        }
        Vehicle.Cavity cavity = connector.cavities().get(pin.id().substring(pin.id().indexOf('.') + 1));
        return cavity == null ? onSheet(connector.path(), connector.at(), what, connector.seen())
                : onSheet(cavity.path(), cavity.at(), what, cavity.seen(), connector.seen());
    }

    /** What the plan itself says was seen for this job. */
    private Shown<String> atPlace(Seen own, Item item, String what) {
        if (own.on().isGiven()) {
            return here(own.on(), item.path(), item.at(), what);
        }
        Vehicle.Place place = vehicle.places().get(item.place().orElse(""));
        return place == null ? onSheet(item.path(), item.at(), what) : onSheet(place.path(), place.at(), what, place.seen());
    }

    private Shown<String> onSheet(String path, At at, String what, Seen... nearest) {
        for (Seen seen : nearest) {
            if (seen.on().isGiven()) {
                return seen.on().orElse("").equals(HERE) ? ofThisJob(path, what, seen.on()) : here(seen.on(), path, at, what);
            }
        }
        return vehicle.seenOn().then(on -> on.equals(HERE) ? ofThisJob(path, what, vehicle.seenOn()) : here(vehicle.seenOn(), path, at, what));
    }

    private Shown<String> ofThisJob(String path, String what, Shown<String> seen) {
        At at = seen.atOr(model.job.planAt());
        return vehicle.tag().with(model.job.plan().job().tag(), String::equals).then(same -> same ? Shown.of(HERE)
                : Shown.missing(new Need(path + ".seen-on", "a look at this car at " + what + "; the sheet was filled in for another job", at)));
    }

    private static Shown<String> here(Shown<String> on, String path, At at, String what) {
        return on.then(word -> word.equals(HERE) ? Shown.of(HERE) : Shown.missing(new Need(path + ".seen-on",
                "a look at this car at " + what + "; it is known from: " + word, on.atOr(at))));
    }
}
