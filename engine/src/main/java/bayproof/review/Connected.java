package bayproof.review;

import bayproof.judge.Verdict;
import bayproof.read.Item;
import bayproof.read.Job;
import bayproof.read.Run;
import bayproof.read.Visit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is connected when a vehicle leaves between two visits. The rules are due for that; a run left unfinished answers only
 * for being dead, capped and tagged, and an item with no other run waits for its next visit.
 */
public final class Connected {
    private static final String DEAD = "unfinished-runs-dead";
    /** What is bolted in must hold, connected or not. */
    private static final List<String> ALWAYS = List.of("mounting");

    private final Set<String> apart = new LinkedHashSet<>();

    private Connected() {
    }

    /** What is connected after the last visit of a job. */
    public static Connected of(Job job) {
        Connected connected = new Connected();
        Visit last = job.plan().lastVisit();
        List<String> runs = last == null ? List.of() : last.unfinished().orElse(List.of());
        runs.forEach(id -> connected.apart.add("runs." + id));
        for (Item item : job.items().values()) {
            List<Run> its = job.plan().runs().values().stream().filter(run -> ends(run, item)).toList();
            if (!its.isEmpty() && its.stream().allMatch(run -> runs.contains(run.id()))) {
                connected.apart.add(item.path());
            }
        }
        return connected;
    }

    private static boolean ends(Run run, Item item) {
        return run.from().orElse("").startsWith(item.id() + ".") || run.to().orElse("").startsWith(item.id() + ".");
    }

    /** Whether a verdict is due although something is not connected. */
    public boolean isDue(Verdict verdict) {
        return verdict.rule().id().equals(DEAD) || ALWAYS.contains(verdict.rule().topic())
                || apart.stream().noneMatch(path -> verdict.subject().equals(path) || verdict.subject().startsWith(path + "."));
    }
}
