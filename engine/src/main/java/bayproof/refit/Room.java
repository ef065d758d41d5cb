package bayproof.refit;

import bayproof.read.Item;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Shown;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;

/** Whether things would go into a space or to a place at all; how much room they need around them, rules judge. */
final class Room {
    /** How well a thing goes to a place, as far as both sheets say. */
    enum Fit { WELL, NOT_SAID, BADLY }

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

    /** How well several items go to one place: as the worst of them does. */
    static Fit fit(Vehicle.Place place, Collection<Item> items) {
        Fit worst = Fit.WELL;
        for (Item item : items) {
            worst = worse(worst, fit(place, item));
        }
        return worst;
    }

    private static Fit fit(Vehicle.Place place, Item item) {
        if (item instanceof Item.Speaker speaker) {
            return speaker.enclosure().isGiven() ? Fit.WELL : has(place.depthMetres(), speaker.driver().depthMetres());
        }
        return item.fitting() == null ? Fit.WELL : worse(has(place.freeDepthMetres(), item.fitting().mount().tipMetres()),
                has(place.clearanceMetres(), item.fitting().neededClearanceMetres()));
    }

    private static Fit has(Shown<Double> room, Shown<Double> needed) {
        return !needed.isGiven() ? Fit.WELL : !room.isGiven() ? Fit.NOT_SAID : needed.orElse(0.0) <= room.orElse(0.0) ? Fit.WELL : Fit.BADLY;
    }

    private static Fit worse(Fit one, Fit other) {
        return one.compareTo(other) > 0 ? one : other;
    }

    /** Those that fit best. */
    static List<String> best(List<String> names, Function<String, Fit> fit) {
        Fit best = names.stream().map(fit).min(Fit::compareTo).orElse(Fit.WELL);
        return names.stream().filter(name -> fit.apply(name) == best).toList();
    }
}
