package bayproof.refit;

import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Vehicle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Kinds of zones and items, as files write them. */
final class Zones {
    private Zones() {
    }

    /** Kind of the zone of a place; an empty word where nobody wrote it. */
    static String kindOfZone(Job job, String place) {
        Vehicle.Place known = job.vehicle().places().get(place);
        Vehicle.Zone zone = known == null ? null : job.vehicle().zones().get(known.zone().orElse(""));
        return zone == null ? "" : zone.kind().orElse("");
    }

    /** Kinds of the zones that a hole joins, sorted; fewer than two where nobody wrote them. */
    static List<String> kindsBeside(Job job, String hole) {
        List<String> kinds = new ArrayList<>();
        for (String id : job.passThroughs().get(hole).between().orElse(List.of())) {
            Vehicle.Zone zone = job.vehicle().zones().get(id);
            if (zone != null) {
                zone.kind().map(kinds::add);
            }
        }
        Collections.sort(kinds);
        return kinds;
    }

    /** The word that files use for the kind of an item. */
    static String kindOf(Item item) {
        return Item.KINDS.entrySet().stream().filter(kind -> kind.getValue() == item.getClass()).map(Map.Entry::getKey).findFirst().orElse("item");
    }
}
