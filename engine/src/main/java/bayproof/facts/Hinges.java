package bayproof.facts;

import bayproof.read.Vehicle;
import bayproof.vocabulary.Kleene;
import bayproof.vocabulary.Need;
import bayproof.vocabulary.Shown;

/** Tells which holes lie at a hinge. */
final class Hinges {
    private final Model model;

    Hinges(Model model) {
        this.model = model;
    }

    /** Whether a run through this hole crosses a hinge. */
    Shown<Boolean> crosses(Vehicle.PassThrough hole) {
        Shown<Boolean> said = hole.hinge().map("yes"::equals);
        Shown<Boolean> door = leadsIntoDoor(hole);
        return said.isGiven() && !Kleene.is(door, true) ? said : Kleene.or(said, door);
    }

    /** A door hangs on hinges, whether the sheet says so or not. */
    private Shown<Boolean> leadsIntoDoor(Vehicle.PassThrough hole) {
        return hole.between().then(zones -> {
            Shown<Boolean> door = Shown.of(false);
            for (String id : zones) {
                Vehicle.Zone zone = model.job.vehicle().zones().get(id);
                door = Kleene.or(door, zone == null ? Shown.missing(new Need("pass-throughs." + hole.id() + ".between", "between of the pass-through " + hole.id(), model.job.planAt())) : zone.kind().map(model.limit("zones-on-hinges").words()::contains));
            }
            return door;
        });
    }
}
