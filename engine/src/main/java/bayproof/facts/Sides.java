package bayproof.facts;

import bayproof.graph.Link;
import bayproof.read.Item;
import java.util.List;

/** Which battery a terminal hangs on: a converter parts two sides, a plain conductor does not. */
final class Sides {
    private final Model model;
    private final List<Item.Battery> batteries;

    Sides(Model model) {
        this.model = model;
        this.batteries = model.job.itemsOf(Item.Battery.class);
    }

    /** The battery the engine starts from: the first of the vehicle sheet, else the first of all; null without one. */
    Item.Battery starter() {
        return batteries.stream().filter(battery -> battery.path().startsWith("supply.")).findFirst()
                .orElse(batteries.isEmpty() ? null : batteries.get(0));
    }

    List<Item.Battery> batteries() {
        return batteries;
    }

    boolean hangsOn(String terminal, Item.Battery battery) {
        return model.joined(terminal, battery.id() + ".positive");
    }

    /** Whether a way of plain conductors and fuses alone leads to a battery, every relay open. */
    boolean hangsOnWithoutRelays(String terminal, Item.Battery battery) {
        return model.wiring.reached(terminal, link -> link.kind() == Link.Kind.RUN || link.kind() == Link.Kind.FUSE).contains(battery.id() + ".positive");
    }

    boolean hangsOnAny(String terminal) {
        return batteries.stream().anyMatch(battery -> hangsOn(terminal, battery));
    }

    /** The terminal an item takes its current from. */
    static String inlet(Item item) {
        return item.id() + (item instanceof Item.Converter ? ".in" : ".supply");
    }
}
