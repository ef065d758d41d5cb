package bayproof.demand;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/** All named limits in force, by name. Immutable. */
public final class Limits {
    private final Map<String, Limit> byName;

    public Limits(Map<String, Limit> byName) {
        this.byName = new LinkedHashMap<>(new TreeMap<>(byName));
    }

    /**
     * The limit of that name.
     *
     * @throws IllegalArgumentException when there is none: a fault of ours, since names stand in rules only
     */
    public Limit named(String name) {
        Limit limit = byName.get(name);
        if (limit == null) {
            throw new IllegalArgumentException("no limit is named " + name);
        }
        return limit;
    }

    public boolean has(String name) {
        return byName.containsKey(name);
    }

    public Collection<Limit> all() {
        return java.util.Collections.unmodifiableCollection(byName.values());
    }

    /** These limits with one replaced. */
    public Limits with(Limit limit) {
        Map<String, Limit> changed = new TreeMap<>(byName);
        changed.put(limit.name(), limit);
        return new Limits(changed);
    }
}
