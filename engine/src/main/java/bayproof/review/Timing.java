package bayproof.review;

import bayproof.judge.RuleTimes;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Where the time goes: each stage begins when the one before it ends. */
public final class Timing {
    private final Map<String, Long> stages = new LinkedHashMap<>();
    private final RuleTimes rules = new RuleTimes();
    private long since = System.nanoTime();

    /** Notes that a stage has ended just now; the same stage may end several times. */
    public void ended(String stage) {
        long now = System.nanoTime();
        stages.merge(stage, now - since, Long::sum);
        since = now;
    }

    /** Nanoseconds by stage, in the order they first ended. */
    public Map<String, Long> stages() {
        return Collections.unmodifiableMap(stages);
    }

    /** The times of the rules. */
    public RuleTimes rules() {
        return rules;
    }
}
