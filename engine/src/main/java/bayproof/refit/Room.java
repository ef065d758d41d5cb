package bayproof.refit;

import bayproof.read.Item;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Shown;

/** Whether a box would go into a space at all; how much room it needs around it, a rule judges. */
final class Room {
    private Room() {
    }

    /** Whether no side that is known is too short in any position of seats and lids. */
    static boolean takes(Vehicle.Space space, Item.Enclosure box) {
        return space.positions().values().stream().allMatch(clear -> fits(clear.heightMetres(), box.heightMetres())
                && fits(clear.widthMetres(), box.widthMetres()) && fits(clear.depthMetres(), box.depthMetres()));
    }

    private static boolean fits(Shown<Double> clear, Shown<Double> outer) {
        return clear.with(outer, (room, size) -> size <= room).orElse(true);
    }
}
