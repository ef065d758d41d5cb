package bayproof.refit;

import java.util.List;

/**
 * One thing of the old job and what becomes of it.
 *
 * @param kind    what it is: item, enclosure, interface, harness, run, mount, setting, hole, channel, bus, or job for what concerns
 *                no single thing
 * @param id      its name in the old plan
 * @param serves  what it serves for, where its name does not say it; may be empty
 * @param where   where it goes in the new vehicle; null where it goes nowhere or nobody can tell yet
 * @param reasons why, the weightiest first; empty where it carries over as it is
 */
public record Row(String kind, String id, String serves, String where, List<Reason> reasons) {
    /** Kinds in the order of a table. */
    public static final List<String> KINDS = List.of("interface", "harness", "enclosure", "item", "mount", "run", "hole", "channel", "setting", "bus", "job");

    public Row {
        reasons = reasons.stream().sorted((one, other) -> other.fate().compareTo(one.fate())).toList();
    }

    /** The worst that any of its reasons makes of it. */
    public Fate fate() {
        return reasons.isEmpty() ? Fate.CARRIES : reasons.get(0).fate();
    }

    /** Whether the new vehicle has nowhere for it, so that nothing is ordered or made in its stead. */
    public boolean isNowhere() {
        return fate() == Fate.NOT && decisive().stream().anyMatch(reason -> reason.verdict() == null && Facts.NOWHERE.contains(reason.fact()));
    }

    /** Its kind and name. */
    public String key() {
        return kind + " " + id;
    }

    /** Reasons that make of it what it is. */
    public List<Reason> decisive() {
        return reasons.stream().filter(reason -> reason.fate() == fate()).toList();
    }
}
