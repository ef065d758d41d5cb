package bayproof.judge;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * The time each rule takes to speak and to be assessed. Finding what it speaks about is work that the rules share; no
 * rule has a part of it.
 */
public final class RuleTimes {
    private final Map<String, Long> nanoseconds = new HashMap<>();
    private String rule;
    private long since;

    void begin(String id) {
        rule = id;
        since = System.nanoTime();
    }

    void end() {
        nanoseconds.merge(rule, System.nanoTime() - since, Long::sum);
    }

    /** Nanoseconds by rule, in the order of their ids. */
    public Map<String, Long> all() {
        return Collections.unmodifiableMap(new TreeMap<>(nanoseconds));
    }
}
