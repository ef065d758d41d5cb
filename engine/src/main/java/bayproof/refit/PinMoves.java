package bayproof.refit;

import bayproof.read.Job;
import bayproof.read.Plan;
import bayproof.read.Tree;
import bayproof.read.Tree.MapTree;
import bayproof.read.Vehicle;
import bayproof.vocabulary.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds for each pin the cavity of the new vehicle that does the same: in the counterpart of its connector, else in any connector whose
 * cavity has its function. A pin that was proved on the old vehicle is not proved here.
 */
final class PinMoves {
    private final Job old;
    private final Job into;
    private final Counterparts counterparts;
    private final Map<String, String> moved = new LinkedHashMap<>();

    PinMoves(Job old, Job into, Counterparts counterparts) {
        this.old = old;
        this.into = into;
        this.counterparts = counterparts;
        for (Plan.PinUse pin : old.plan().pins().values()) {
            String found = cavityFor(pin);
            if (found != null) {
                moved.put(pin.id(), found);
            }
        }
    }

    /** Cavity of the new vehicle for a pin of the old one; the pin's own name where none does the same. */
    String of(String pin) {
        return moved.getOrDefault(pin, pin);
    }

    /** The pins under their new names. */
    MapTree tree(MapTree pins) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        moved.forEach((pin, found) -> {
            if (pins.get(pin) instanceof MapTree entry) {
                Shown<String> color = Counterparts.cavity(into, found).color();
                MapTree kept = Trees.without(entry, "identified", "color");
                entries.put(found, color.isGiven() ? kept.with("color", Trees.word(color.orElse(""))) : kept);
            }
        });
        return Trees.group(entries);
    }

    private String cavityFor(Plan.PinUse pin) {
        Counterpart connector = counterparts.connector(Counterparts.connectorOf(pin.id()));
        if (connector != null && !connector.isFound() && !connector.isNone()) {
            return null;
        }
        List<String> all = new ArrayList<>();
        for (Vehicle.Connector one : into.vehicle().connectors().values()) {
            if (connector == null || connector.isNone() || one.id().equals(connector.found())) {
                one.cavities().forEach((name, cavity) -> {
                    if (serves(pin, cavity) && !moved.containsValue(one.id() + "." + name)) {
                        all.add(one.id() + "." + name);
                    }
                });
            }
        }
        String number = pin.id().substring(pin.id().indexOf('.'));
        // A number means the same cavity only in a connector of one family.
        List<String> same = isSameFamily(connector) ? all.stream().filter(id -> id.endsWith(number)).toList() : List.of();
        // Two wires of one output are told apart by nothing but their order.
        return same.size() == 1 ? same.get(0) : all.isEmpty() ? null : all.size() == 1 || output(pin) != null ? all.get(0) : null;
    }

    private boolean isSameFamily(Counterpart connector) {
        return connector != null && connector.isFound() && old.vehicle().connectors().get(connector.old()).family().orElse("")
                .equals(into.vehicle().connectors().get(connector.found()).family().orElse("-"));
    }

    private boolean serves(Plan.PinUse pin, Vehicle.Cavity cavity) {
        String output = output(pin);
        return pin.function().isGiven() && cavity.function().orElse("").equals(pin.function().orElse(""))
                && (output == null || cavity.output().orElse("").equals(output));
    }

    /** The new vehicle's output that the pin is to carry; null where the old sheet names none or it has no counterpart. */
    private String output(Plan.PinUse pin) {
        Vehicle.Cavity cavity = Counterparts.cavity(old, pin.id());
        Counterpart output = cavity == null ? null : counterparts.output(cavity.output().orElse(""));
        return output == null ? null : output.found();
    }
}
