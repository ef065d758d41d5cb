package bayproof.read;

import bayproof.demand.Limits;
import bayproof.vocabulary.At;
import java.util.Map;

/**
 * One job as read: plan, vehicle sheet, parts, readings and limits, bound and checked for references.
 *
 * @param items        items of the plan and sources of the vehicle sheet, by id
 * @param runs         runs of the plan and links of the vehicle sheet, by id
 * @param passThroughs holes of the vehicle sheet, overlaid by what the plan does to them
 * @param book         parts of kind harness in the parts books: ways of joining the shop has at hand
 * @param taken        readings by path of the value they measured
 * @param waivers      recorded decisions to accept a verdict, by name
 * @param planAt       where the plan begins
 */
public record Job(Plan plan, Vehicle vehicle, boolean vehicleNamed, Map<String, Item> items, Map<String, Run> runs,
                  Map<String, Vehicle.PassThrough> passThroughs, Map<String, Item.Harness> book, Limits limits, Map<String, Taken> taken,
                  Map<String, Waiver> waivers, At planAt) {

    /** The item a terminal belongs to, or null. */
    public Item itemOf(String terminal) {
        int dot = terminal.indexOf('.');
        return dot < 0 ? null : items.get(terminal.substring(0, dot));
    }

    /** Whether a run was laid by the vehicle maker. */
    public boolean isFactory(Run run) {
        return vehicle.supply().links().containsKey(run.id());
    }

    @SuppressWarnings("unchecked")
    public <T extends Item> java.util.List<T> itemsOf(Class<T> kind) {
        return (java.util.List<T>) (java.util.List<?>) items.values().stream().filter(kind::isInstance).toList();
    }
}
